import type { IncomingMessage, ServerResponse } from 'node:http';
import { CHANNELS } from '../../boards/host';
import type { HostCalls } from '../host/host-calls';
import type { PageFiles } from '../host/page-files';
import { PAGE_HEADERS } from '../host/page-headers';
import { receive } from '../host/receive';
import { CALL_PREFIX, refuseStranger } from './guard';
import { readJsonBody } from './json-body';
import type { Presence } from './presence';
import type { Keys } from './token';

export interface Served {
  readonly port: () => number;
  readonly files: PageFiles;
  readonly calls: HostCalls;
  readonly keys: Keys;
  readonly presence: Presence;
  /** Told of a bug in a handler; the page only learns that there was one. */
  readonly report: (thrown: unknown) => void;
}

const TOKEN_HEADER = 'x-leadwright-token';

/**
 * Answers one request: a file of the page, the exchange of a start code for the token, the request that
 * stays open while the page lives, or a call. The address is compared as it was sent; nothing is decoded.
 */
export async function serve(
  served: Served,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const stranger = refuseStranger(request, served.port());
  if (stranger !== null) return refuse(response, stranger.status, stranger.reason);
  const target = request.url ?? '';
  if (request.method === 'GET') return serveFile(served, target, response);
  if (target === '/start') return exchange(served, request, response);
  if (!served.keys.isToken(tokenOf(request))) return refuse(response, 401, 'no token');
  if (target === '/alive') return stayOpen(served, request, response);
  if (target.startsWith(CALL_PREFIX))
    return call(served, target.slice(CALL_PREFIX.length), request, response);
  return refuse(response, 404, 'no such address');
}

function serveFile({ files }: Served, target: string, response: ServerResponse): void {
  const file = files.get(target);
  if (file === undefined) {
    refuse(response, 404, 'no such address');
    return;
  }
  response.writeHead(200, { ...PAGE_HEADERS, 'Content-Type': file.type, 'Content-Length': file.body.length });
  response.end(file.body);
}

async function exchange({ keys }: Served, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const body = await readJsonBody(request);
  const token = keys.redeem(body?.value);
  return token === null ? refuse(response, 401, 'wrong code') : answer(response, token);
}

async function stayOpen(
  { presence }: Served,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const page = CHANNELS.about.input.shape.page.safeParse((await readJsonBody(request))?.value);
  // The head goes at once, so that the page knows it has been let in.
  response.writeHead(200, { ...PAGE_HEADERS, 'Content-Type': 'application/json' });
  response.flushHeaders();
  presence.hold(response, page.success ? page.data : null);
}

async function call(
  { calls, report }: Served,
  channel: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const body = await readJsonBody(request);
  if (body === null) return refuse(response, 400, 'not JSON');
  try {
    const received = await receive(calls, channel, body.value);
    if (received.ok) return answer(response, received.value);
    return refuse(response, received.problem === 'unknown-channel' ? 404 : 400, received.problem);
  } catch (thrown) {
    report(thrown);
    return refuse(response, 500, 'our own mistake');
  }
}

function answer(response: ServerResponse, value: unknown): void {
  // JSON has no undefined: a call without an answer has an empty body.
  const body = value === undefined ? '' : JSON.stringify(value);
  response.writeHead(200, {
    ...PAGE_HEADERS,
    'Content-Type': 'application/json',
    'Content-Length': Buffer.byteLength(body),
  });
  response.end(body);
}

function refuse(response: ServerResponse, status: number, reason: string): void {
  // The rest of what the stranger sends is not wanted.
  response.writeHead(status, {
    ...PAGE_HEADERS,
    'Content-Type': 'text/plain; charset=utf-8',
    Connection: 'close',
  });
  response.end(reason);
}

function tokenOf(request: IncomingMessage): string | undefined {
  const sent = request.headers[TOKEN_HEADER];
  return typeof sent === 'string' ? sent : undefined;
}
