import { CHANNELS, type ChannelName } from '../../boards/host';
import type { HostCalls } from './host-calls';

/** A call as it came over the boundary, refused before any handler has seen it. */
export type Received =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: 'unknown-channel' | 'bad-input' };

/** As much as a call may bring: a file of the greatest length, and room for how it is packed. */
export const INPUT_LIMIT_BYTES = 128 * 1024 * 1024;

/** The input of a call from its JSON, which is empty where it takes none; null where it is not JSON, or too long. */
export function inputIn(json: unknown): { readonly value: unknown } | null {
  if (typeof json !== 'string' || json.length > INPUT_LIMIT_BYTES) return null;
  try {
    return { value: json === '' ? undefined : JSON.parse(json) };
  } catch {
    return null;
  }
}

/** Answers one call of a page. Nothing the page sends is used before its schema has passed it. */
export async function receive(calls: HostCalls, channel: string, raw: unknown): Promise<Received> {
  if (!isChannel(channel)) return { ok: false, problem: 'unknown-channel' };
  const checked = CHANNELS[channel].input.safeParse(raw);
  if (!checked.success) return { ok: false, problem: 'bad-input' };
  // Its schema has just passed the input; that schema and handler belong together the compiler cannot see.
  const handler = calls[channel] as (input: unknown) => Promise<unknown>;
  return { ok: true, value: await handler(checked.data) };
}

function isChannel(name: string): name is ChannelName {
  return Object.hasOwn(CHANNELS, name);
}
