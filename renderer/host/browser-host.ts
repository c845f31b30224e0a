import { CHANNELS, type ChannelName, type HostApi, type Input, type Output } from '../../boards/host';

const TOKEN_KEY = 'leadwright-token';
const RETRY_MS = 2_000;

/** The machine by way of the door on 127.0.0.1 that served this page; `page` is what the page calls itself. */
export async function browserHost(page: string): Promise<HostApi> {
  const token = await tokenOfPage();
  void stayAlive(token, page);
  const through = <C extends ChannelName>(channel: C) => {
    return async (input?: Input<C>): Promise<Output<C>> => {
      const answer = await post(`/call/${channel}`, input, token);
      // The schema is the one that Output<C> is inferred from; the compiler cannot join the two by C.
      return CHANNELS[channel].output.parse(answer) as Output<C>;
    };
  };
  return {
    about: through('about'),
    chooseOpen: through('chooseOpen'),
    chooseSave: through('chooseSave'),
    browse: through('browse'),
    placeNew: through('placeNew'),
    open: through('open'),
    save: through('save'),
    drawPaper: through('drawPaper'),
    savePaper: through('savePaper'),
    saveList: through('saveList'),
    stopPaper: through('stopPaper'),
    listRecent: through('listRecent'),
    noteRecent: through('noteRecent'),
    forgetRecent: through('forgetRecent'),
    chooseFolder: through('chooseFolder'),
    moveLibrary: through('moveLibrary'),
    listLibrary: through('listLibrary'),
    readSheetHeads: through('readSheetHeads'),
    keepSheet: through('keepSheet'),
    removeSheet: through('removeSheet'),
    readSettings: through('readSettings'),
    writeSettings: through('writeSettings'),
    keepRecovery: through('keepRecovery'),
    dropRecovery: through('dropRecovery'),
    listRecovery: through('listRecovery'),
    takeRecovery: through('takeRecovery'),
    listVersions: through('listVersions'),
    readVersion: through('readVersion'),
    writeReport: through('writeReport'),
    showState: through('showState'),
    // This door has no menu and no second start: the machine never asks anything of the page.
    onRequest: () => () => undefined,
  };
}

/**
 * The start code in the address is good for one token. The token is kept for the tab, so that loading
 * the page again goes on working: the store belongs to this exact port, is gone with the tab, and the
 * token is worth nothing once the program has ended.
 */
async function tokenOfPage(): Promise<string> {
  const code = location.hash.slice(1);
  if (code !== '') {
    history.replaceState(null, '', location.pathname);
    const token = await post('/start', code, null).catch(() => null);
    if (typeof token === 'string') sessionStorage.setItem(TOKEN_KEY, token);
  }
  const kept = sessionStorage.getItem(TOKEN_KEY);
  if (kept === null)
    throw new Error('This address was already used. Start Leadwright again for a new window.');
  return kept;
}

async function post(path: string, input: unknown, token: string | null): Promise<unknown> {
  const response = await send(path, input, token);
  if (response.status === 401) throw new Error('This window no longer belongs to a running Leadwright.');
  if (!response.ok) throw new Error(`Leadwright did not take the call ${path}: ${await response.text()}.`);
  const text = await response.text();
  return text === '' ? undefined : JSON.parse(text);
}

async function send(path: string, input: unknown, token: string | null): Promise<Response> {
  const headers: Record<string, string> = { 'Content-Type': 'application/json' };
  if (token !== null) headers['X-Leadwright-Token'] = token;
  const body = input === undefined ? '' : JSON.stringify(input);
  try {
    return await fetch(path, { method: 'POST', headers, body });
  } catch {
    throw new Error(
      'The program behind this window has ended. Start Leadwright again; unsaved work is kept.',
    );
  }
}

/** Keeps one request open: by it the program knows that this page is there. */
async function stayAlive(token: string, page: string): Promise<never> {
  for (;;) {
    await post('/alive', page, token).catch(() => undefined);
    await new Promise((resolve) => setTimeout(resolve, RETRY_MS));
  }
}
