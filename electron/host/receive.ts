import { CHANNELS, type ChannelName, type Input } from '../../boards/host';
import type { HostCalls } from './host-calls';

/** A call as it came over the boundary, refused before any handler has seen it. */
export type Received =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: 'unknown-channel' | 'bad-input' };

/** Answers one call of a page. Nothing the page sends is used before its schema has passed it. */
export async function receive(calls: HostCalls, channel: string, raw: unknown): Promise<Received> {
  if (!isChannel(channel)) return { ok: false, problem: 'unknown-channel' };
  return answer(calls, channel, raw);
}

export function isChannel(name: string): name is ChannelName {
  return Object.hasOwn(CHANNELS, name);
}

async function answer<C extends ChannelName>(calls: HostCalls, channel: C, raw: unknown): Promise<Received> {
  const checked = CHANNELS[channel].input.safeParse(raw);
  if (!checked.success) return { ok: false, problem: 'bad-input' };
  // The schema just used is the one that Input<C> is inferred from; the compiler cannot join the two by C.
  return { ok: true, value: await calls[channel](checked.data as Input<C>) };
}
