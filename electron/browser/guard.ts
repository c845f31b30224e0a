import type { IncomingMessage } from 'node:http';
import { INPUT_LIMIT_BYTES } from '../host/receive';

/** What addresses begin with that take the input of a call; only these may be long, and they ask for the token first. */
export const CALL_PREFIX = '/call/';

/** A start code or the name of a page, with room to spare: nothing else is sent to any other address. */
const SHORT_LIMIT_BYTES = 1024;

/** What a request has to be before anything is done for it: the status it is refused with, or null. */
export type Verdict = { readonly status: number; readonly reason: string } | null;

/**
 * Rules for every request: this protocol, this machine by the one name we gave, from our own page.
 * Other pages in the same browser can send requests here too, and any name can be made to lead here
 * (DNS rebinding); names are therefore compared as text and never understood.
 */
export function refuseStranger(request: IncomingMessage, port: number): Verdict {
  if (request.httpVersion !== '1.1') return { status: 400, reason: 'HTTP/1.1 only' };
  const hosts = valuesOf(request, 'host');
  if (hosts.length !== 1 || hosts[0] !== `127.0.0.1:${port}`) return { status: 421, reason: 'wrong Host' };
  const method = request.method;
  if (method !== 'GET' && method !== 'POST') return { status: 405, reason: 'GET and POST only' };
  return method === 'GET' ? refuseForeignGet(request) : refuseForeignPost(request, port);
}

/** A page elsewhere may send a person here, and may not load our files into itself. */
function refuseForeignGet(request: IncomingMessage): Verdict {
  const { 'sec-fetch-site': site, 'sec-fetch-mode': mode, 'sec-fetch-dest': dest } = request.headers;
  if (hasBody(request)) return { status: 400, reason: 'a GET with a body' };
  if (site === undefined || site === 'none' || site === 'same-origin') return null;
  if (mode === 'navigate' && dest === 'document') return null;
  return { status: 403, reason: 'another site' };
}

function refuseForeignPost(request: IncomingMessage, port: number): Verdict {
  const { origin, 'sec-fetch-site': site, 'content-type': type, 'content-length': length } = request.headers;
  if (valuesOf(request, 'origin').length !== 1 || origin !== `http://127.0.0.1:${port}`) {
    return { status: 403, reason: 'wrong Origin' };
  }
  if (site !== 'same-origin') return { status: 403, reason: 'another site' };
  if (type !== 'application/json') return { status: 415, reason: 'JSON only' };
  if (request.headers['content-encoding'] !== undefined) return { status: 415, reason: 'no encodings' };
  if (length === undefined || request.headers['transfer-encoding'] !== undefined) {
    return { status: 411, reason: 'length required' };
  }
  const limit = request.url?.startsWith(CALL_PREFIX) ? INPUT_LIMIT_BYTES : SHORT_LIMIT_BYTES;
  return Number(length) > limit ? { status: 413, reason: 'too large' } : null;
}

function hasBody(request: IncomingMessage): boolean {
  const { 'content-length': length, 'transfer-encoding': encoding } = request.headers;
  return encoding !== undefined || (length !== undefined && length !== '0');
}

/** Every value of a header as sent: Node keeps only the first of two Hosts. */
function valuesOf({ rawHeaders }: IncomingMessage, name: string): readonly string[] {
  return rawHeaders.filter((_, at) => at % 2 === 1 && rawHeaders[at - 1]?.toLowerCase() === name);
}
