import { connect } from 'node:net';

/** A request as bytes, so that it can be as wrong as a stranger's. */
export interface RawRequest {
  readonly method?: string;
  readonly target?: string;
  readonly protocol?: string;
  /** In order, the same name more than once if need be; null leaves one of the usual ones out. */
  readonly headers?: Readonly<Record<string, string | null>>;
  readonly more?: readonly string[];
  readonly body?: string;
}

export interface RawAnswer {
  readonly status: number;
  readonly head: string;
  readonly body: string;
}

/** Sends it to 127.0.0.1 and reads until the other side has done. */
export function sendRaw(port: number, request: RawRequest): Promise<RawAnswer> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1');
    const chunks: Buffer[] = [];
    socket.setTimeout(20_000, () => socket.destroy(new Error('no answer')));
    socket.on('data', (chunk) => chunks.push(chunk));
    socket.on('error', reject);
    socket.on('close', () => resolve(answerFrom(Buffer.concat(chunks).toString('utf8'))));
    socket.write(bytesOf(port, request));
  });
}

function bytesOf(
  port: number,
  { method = 'GET', target = '/', protocol = 'HTTP/1.1', headers, more = [], body }: RawRequest,
) {
  const all: Record<string, string | null> = { Host: `127.0.0.1:${port}`, Connection: 'close', ...headers };
  if (body !== undefined && !('Content-Length' in all) && !('Transfer-Encoding' in all)) {
    all['Content-Length'] = String(Buffer.byteLength(body));
  }
  const lines = Object.entries(all).flatMap(([name, value]) => (value === null ? [] : [`${name}: ${value}`]));
  return `${[`${method} ${target} ${protocol}`, ...lines, ...more].join('\r\n')}\r\n\r\n${body ?? ''}`;
}

function answerFrom(text: string): RawAnswer {
  const [head = '', ...rest] = text.split('\r\n\r\n');
  return { status: Number(head.split(' ')[1]), head, body: rest.join('\r\n\r\n') };
}
