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

/**
 * Sends it, and a body in so many pieces behind it for as long as the other side takes them.
 *
 * @returns what was heard, and how many bytes were taken
 */
export function pourIn(port: number, request: RawRequest, piece: string, pieces: number) {
  return new Promise<{ readonly heard: string; readonly taken: number }>((resolve) => {
    const socket = connect(port, '127.0.0.1');
    let heard = '';
    let sent = 0;
    const pour = () => {
      while (!socket.destroyed && sent < pieces && socket.writableLength === 0) {
        sent += 1;
        socket.write(piece);
      }
    };
    socket.on('data', (chunk) => {
      heard += chunk.toString('utf8');
    });
    socket.on('drain', pour);
    // Sent away in the middle of it: that is what is asked for.
    socket.on('error', () => undefined);
    socket.on('close', () => resolve({ heard, taken: socket.bytesWritten - socket.writableLength }));
    socket.write(bytesOf(port, request), pour);
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
