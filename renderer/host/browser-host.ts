import type { HostApi } from '../../boards/host';
import { hostBy } from './host-by';
import { NoAnswer } from './no-answer';

const TOKEN_KEY = 'leadwright-token';
const RETRY_MS = 2_000;
/** Letters that go off sooner as a blob: the browser hands a text on bit by bit, and the window waits meanwhile. */
const LONG_BODY = 256 * 1024;

/** The machine by way of the door on 127.0.0.1 that served this page; `page` is what the page calls itself. */
export async function browserHost(page: string): Promise<HostApi> {
  const token = await tokenOfPage();
  void stayAlive(token, page);
  return hostBy(
    (channel, json = '') => post(`/call/${channel}`, json, token),
    // This door has no menu and no second start: the machine never asks anything of the page.
    () => () => undefined,
  );
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
    const token = await post('/start', JSON.stringify(code), null).catch(() => null);
    if (typeof token === 'string') sessionStorage.setItem(TOKEN_KEY, token);
  }
  const kept = sessionStorage.getItem(TOKEN_KEY);
  if (kept === null)
    throw new Error('This address was already used. Start Leadwright again for a new window.');
  return kept;
}

async function post(path: string, json: string, token: string | null): Promise<unknown> {
  const response = await send(path, json, token);
  if (response.status === 401) throw new NoAnswer('This window no longer belongs to a running Leadwright.');
  if (!response.ok) throw new Error(`Leadwright did not take the call ${path}: ${await response.text()}.`);
  const text = await response.text();
  return text === '' ? undefined : JSON.parse(text);
}

async function send(path: string, json: string, token: string | null): Promise<Response> {
  const headers: Record<string, string> = { 'Content-Type': 'application/json' };
  if (token !== null) headers['X-Leadwright-Token'] = token;
  try {
    const body = json.length > LONG_BODY ? new Blob([json]) : json;
    return await fetch(path, { method: 'POST', headers, body });
  } catch {
    throw new NoAnswer(
      'The program behind this window does not answer. Start Leadwright again; what was kept of unsaved work is offered there.',
    );
  }
}

/** Keeps one request open: by it the program knows that this page is there. */
async function stayAlive(token: string, page: string): Promise<never> {
  for (;;) {
    await post('/alive', JSON.stringify(page), token).catch(() => undefined);
    await new Promise((resolve) => setTimeout(resolve, RETRY_MS));
  }
}
