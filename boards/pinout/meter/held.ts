import type { PinReading } from '../../document/pin-reading';
import { logSumExp } from '../../inference/log-space';
import { type AskedReading, askedBy, askedKey, together } from './evidence';
import type { Header } from './header';
import { pinKinds } from './pin-kinds';

/** What is held of a header after some readings. */
export interface Held {
  readonly header: Header;
  /** Logarithm of the weight of each layout. */
  readonly logs: Float64Array;
  /** Logarithm of what the readings at each post say of its kind, at [post × kinds + kind]. */
  readonly posts: Float64Array;
  readonly asked: ReadonlyMap<string, Asked>;
}

interface Asked {
  readonly question: AskedReading;
  readonly readings: readonly PinReading[];
  /** What they say together, as it was added to the rest. */
  readonly logs: Float64Array;
}

/** Before the first reading. */
export function startHeld(header: Header): Held {
  const posts = new Float64Array(header.posts.length * pinKinds().length);
  return { header, logs: header.logWeights, posts, asked: new Map() };
}

/** After one more reading. One at a pin that does not stand says nothing of the layout. */
export function withReading(held: Held, reading: PinReading): Held {
  const { header, asked } = held;
  const question = askedBy(reading);
  const pins = 'single' in question ? [question.pin] : question.pins;
  const at = pins.map((pin) => header.postOf.get(pin));
  if (at.some((post) => post === undefined)) return held;
  const key = askedKey(question);
  const before = asked.get(key);
  const readings = [...(before?.readings ?? []), reading];
  const logs = together(readings);
  const change = before === undefined ? logs : logs.map((log, i) => log - (before.logs[i] ?? 0));
  const next = { ...held, asked: new Map(asked).set(key, { question, readings, logs }) };
  const [first = 0, second] = at;
  return second === undefined ? atPost(next, first, change) : betweenPosts(next, first, second, change);
}

function atPost(held: Held, post: number, change: Float64Array): Held {
  const { layouts, kinds } = held.header;
  const many = layouts.length;
  const logs = Float64Array.from(held.logs);
  const base = post * many;
  for (let i = 0; i < many; i++) logs[i] = (logs[i] ?? 0) + (change[kinds[base + i] ?? 0] ?? 0);
  const posts = Float64Array.from(held.posts);
  const size = pinKinds().length;
  for (let kind = 0; kind < size; kind++)
    posts[post * size + kind] = (posts[post * size + kind] ?? 0) + (change[kind] ?? 0);
  return { ...held, logs, posts };
}

function betweenPosts(held: Held, a: number, b: number, change: Float64Array): Held {
  const { layouts, kinds } = held.header;
  const many = layouts.length;
  const size = pinKinds().length;
  const logs = Float64Array.from(held.logs);
  for (let i = 0; i < many; i++) {
    const row = (kinds[a * many + i] ?? 0) * size + (kinds[b * many + i] ?? 0);
    logs[i] = (logs[i] ?? 0) + (change[row] ?? 0);
  }
  return { ...held, logs };
}

/** After all readings of a sheet. */
export function afterReadings(header: Header, readings: readonly PinReading[]): Held {
  return readings.reduce(withReading, startHeld(header));
}

/** Chances of the layouts and of "none of these"; and of the kinds of each post, if it follows no layout. */
export interface Chances {
  readonly layouts: Float64Array;
  readonly none: number;
  /** At [post × kinds + kind], adding up to 1 for each post. */
  readonly stray: Float64Array;
}

export function chancesIn(held: Held): Chances {
  const { header, posts } = held;
  const size = pinKinds().length;
  const stray = new Float64Array(posts.length);
  let logNone = header.logNone;
  for (let post = 0; post < header.posts.length; post++) {
    let most = Number.NEGATIVE_INFINITY;
    for (let kind = 0; kind < size; kind++) most = Math.max(most, posts[post * size + kind] ?? most);
    let sum = 0;
    for (let kind = 0; kind < size; kind++) {
      const weight = (header.strayKinds[kind] ?? 0) * Math.exp((posts[post * size + kind] ?? 0) - most);
      stray[post * size + kind] = weight;
      sum += weight;
    }
    for (let kind = 0; kind < size; kind++)
      stray[post * size + kind] = (stray[post * size + kind] ?? 0) / sum;
    logNone += most + Math.log(sum);
  }
  for (const { question, logs } of held.asked.values())
    if ('pair' in question) logNone += strayPair(held, question.pins, logs, stray);
  const inLayouts = logSumExp(held.logs);
  const all = logSumExp([inLayouts, logNone]);
  const layouts = new Float64Array(held.logs.length);
  for (let i = 0; i < layouts.length; i++) {
    const log = (held.logs[i] ?? 0) - all;
    layouts[i] = log < -40 ? 0 : Math.exp(log);
  }
  return { layouts, none: Math.exp(logNone - all), stray };
}

/**
 * What readings between two stray posts say: as if each pair were the only one, with the kinds as the single
 * readings have left them. Exact for one pair; for more a close guess, since "none of these" is only a measure.
 */
function strayPair(held: Held, pins: readonly string[], logs: Float64Array, stray: Float64Array): number {
  const size = pinKinds().length;
  const [a = 0, b = 0] = pins.map((pin) => held.header.postOf.get(pin) ?? 0);
  let sum = 0;
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++)
      sum += (stray[a * size + i] ?? 0) * (stray[b * size + j] ?? 0) * Math.exp(logs[i * size + j] ?? 0);
  return Math.log(sum);
}

/** Chances of the kinds of each post over everything it could follow, at [post × kinds + kind]. */
export function kindChances({ header }: Held, { layouts, none, stray }: Chances): Float64Array {
  const size = pinKinds().length;
  const many = header.layouts.length;
  const chances = stray.map((chance) => none * chance);
  for (let i = 0; i < many; i++) {
    const chance = layouts[i] ?? 0;
    if (chance < 1e-9) continue;
    for (let post = 0; post < header.posts.length; post++) {
      const at = post * size + (header.kinds[post * many + i] ?? 0);
      chances[at] = (chances[at] ?? 0) + chance;
    }
  }
  return chances;
}
