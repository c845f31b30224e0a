import type { Build } from '../../../boards/document/build';
import { parseDocument } from '../../../boards/document/parse';
import { CHANNELS, type ChannelName, type Input, type Output } from '../../../boards/host';
import { bareSheet } from '../../electron/scratch';
import { everyPrint } from '../../strangers/every-print';

/** Input is left out of a call that takes none. */
type Ask = <C extends ChannelName>(channel: C, input?: Input<C>) => Promise<Output<C>>;

const PAGE = 'a-page-of-the-tests';
const SESSION = 'a-session-of-the-tests';

/**
 * Does at a door what its page does from morning to night: has the token and every file of the page, opens what the
 * door was begun with, saves, prints, lists, keeps sheets and copies. Throws at what the door does not take.
 *
 * @param url where the door sends its page
 * @returns the channels that were asked
 */
export async function everyCall(url: string): Promise<ReadonlySet<string>> {
  const { origin, hash } = new URL(url);
  const asked = new Set<string>();
  const send = async (path: string, input: unknown, token = '') => {
    const headers = {
      Origin: origin,
      'Sec-Fetch-Site': 'same-origin',
      'Content-Type': 'application/json',
      'X-Leadwright-Token': token,
    };
    const body = input === undefined ? '' : JSON.stringify(input);
    const answer = await fetch(`${origin}${path}`, { method: 'POST', headers, body });
    if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
    return answer;
  };
  await pageOf(origin);
  const token = await (await send('/start', hash.slice(1))).json();
  const alive = await send('/alive', PAGE, token);
  const ask: Ask = async (channel, input) => {
    asked.add(channel);
    const text = await (await send(`/call/${channel}`, input, token)).text();
    const answer: unknown = text === '' ? undefined : JSON.parse(text);
    return CHANNELS[channel].output.parse(answer) as Output<typeof channel>;
  };
  const build = await opened(ask);
  await atFiles(ask, build);
  await onPaper(ask, build);
  await atSheets(ask);
  await atTheRest(ask);
  await alive.body?.cancel();
  return asked;
}

/** The page itself, and every file that it names. */
async function pageOf(origin: string): Promise<void> {
  const page = await (await fetch(`${origin}/`)).text();
  const names = [...page.matchAll(/(?:src|href)="([^"]+)"/g)].map(([, name = '']) => name);
  if (names.length === 0) throw new Error('The page names no file');
  for (const name of names) {
    const { ok } = await fetch(new URL(name, origin));
    if (!ok) throw new Error(`${name} of the page is not there`);
  }
}

interface Work {
  readonly handle: string;
  readonly text: string;
  readonly build: Build;
  readonly stamp: string;
}

async function opened(ask: Ask): Promise<Work> {
  const { toOpen } = await ask('about', { page: PAGE });
  const { handle, text, stamp } = good(await ask('open', { handle: toOpen[0] ?? '' }));
  const parsed = parseDocument(text);
  if (!parsed.ok || parsed.value.format !== 'leadwright/build') throw new Error('Not a build');
  return { handle, text, build: parsed.value, stamp };
}

async function atFiles(ask: Ask, { handle, text, build, stamp }: Work): Promise<void> {
  await ask('chooseOpen');
  await ask('chooseSave', { suggested: 'x.build.json', kind: 'build' });
  await ask('noteRecent', { handle });
  await ask('listRecent');
  const copy = { session: SESSION, page: PAGE, handle, stamp, name: 'desk', text, changes: 1 };
  good(await ask('keepRecovery', copy));
  good(await ask('save', { handle, document: { ...build, notes: 'Saved' }, expected: stamp }));
  const [version] = await ask('listVersions', { handle });
  good(await ask('readVersion', { handle, id: version?.id ?? '' }));
  await ask('listRecovery');
  await ask('takeRecovery', { id: SESSION, page: PAGE });
  await ask('dropRecovery', { id: SESSION, page: PAGE });
  await ask('forgetRecent', { handle: null });
}

async function onPaper(ask: Ask, { text, build }: Work): Promise<void> {
  const { handle: folder } = good(await ask('browse', { folder: null }));
  for (const print of everyPrint(build)) good(await ask('drawPaper', { document: text, print, page: 1 }));
  const [print] = everyPrint(build);
  if (print === undefined) throw new Error('There is no paper');
  for (const format of ['pdf', 'svg', 'png'] as const) {
    const { handle } = good(await ask('placeNew', { folder, name: `paper.${format}`, kind: format }));
    good(await ask('savePaper', { handle, document: text, print, format, page: 1, scale: 1 }));
  }
  const { handle } = good(await ask('placeNew', { folder, name: 'list.csv', kind: 'csv' }));
  good(await ask('saveList', { handle, build: text, list: 'cables' }));
  await ask('stopPaper');
}

async function atSheets(ask: Ask): Promise<void> {
  await ask('chooseFolder');
  good(await ask('moveLibrary', { folder: null }));
  const place = { kind: 'new', name: 'bare.board.json' } as const;
  good(await ask('keepSheet', { document: bareSheet('http://192.0.2.1/'), place }));
  const { files } = good(await ask('listLibrary'));
  const handles = files.map(({ handle }) => handle);
  await ask('readSheetHeads', { handles });
  good(await ask('removeSheet', { handle: handles[0] ?? '' }));
}

async function atTheRest(ask: Ask): Promise<void> {
  await ask('writeSettings', { ...(await ask('readSettings')), theme: 'dark' });
  good(await ask('writeReport', { name: 'Error', message: 'http://192.0.2.1/', stack: '' }));
  await ask('showState', { name: 'desk', unsaved: false });
}

function good<T>(
  answer: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: unknown },
): T {
  if (!answer.ok) throw new Error(JSON.stringify(answer.problem));
  return answer.value;
}
