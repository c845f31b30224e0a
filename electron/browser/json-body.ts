import type { IncomingMessage } from 'node:http';
import { inputIn } from '../host/receive';

/** The value in the body of a request, or null where it is not JSON. The guard has limited its length. */
export async function readJsonBody(request: IncomingMessage): Promise<{ readonly value: unknown } | null> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk);
  return inputIn(Buffer.concat(chunks).toString('utf8'));
}
