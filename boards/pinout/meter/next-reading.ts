import type { PinReading } from '../../document/pin-reading';
import { bestQuestion } from '../../inference/best-question';
import { askedBy, askedKey } from './evidence';
import { byKind, countingLayouts, pairGain, readingsLeft, singleGain } from './gains';
import { type Chances, type Held, kindChances } from './held';
import type { MeterQuestion, NextReading, WithheldReading } from './identification';
import { PAIR_ANSWERS, PAIRS, type Pair } from './pair-answers';
import { pinKinds } from './pin-kinds';
import { riskOf } from './risks';
import { SINGLES, type Single } from './single-answers';
import { type MeterState, stateFor } from './words';

/** What each reading costs, beside one ohm reading on an unplugged board (common practice, no source). */
const EFFORT: Readonly<Record<Single | Pair, number>> = {
  ohms: 1,
  continuity: 1,
  standby: 1.1,
  running: 1.2,
  'lamp-standby': 2,
  'lamp-running': 2,
  'touch-standby': 3,
  'touch-running': 5,
};
/** To plug in, to start or to unplug the machine first: shared by the readings that follow in the same state. */
const SWITCH_OVER = 0.1;
/** Below this nothing is worth a reading. */
const LEAST_BITS = 0.01;
/** From here on a layout is taken for the one. */
export const IDENTIFIED = 0.95;
/** What a repeat of a reading is worse than the first, in readings. */
const REPEATED = 0.7;
/** Of what a reading told when it was asked for the first time, so much is new when it is asked again. */
const AGAIN = 0.5;

function questionOf(asked: Single | Pair, first: string, second: string): MeterQuestion {
  switch (asked) {
    case 'ohms':
      return { kind: 'ohms', pin: first };
    case 'standby':
    case 'running':
      return { kind: 'volts', pin: first, supply: asked };
    case 'continuity':
      return { kind: 'continuity', pins: [first, second] };
    case 'touch-standby':
      return { kind: 'touch', pins: [first, second], supply: 'standby' };
    case 'touch-running':
      return { kind: 'touch', pins: [first, second], supply: 'running' };
    case 'lamp-standby':
      return { kind: 'lamp', plus: first, minus: second, supply: 'standby' };
    case 'lamp-running':
      return { kind: 'lamp', plus: first, minus: second, supply: 'running' };
  }
}

/** A reading that could be taken, with its risk where it has one. */
type Candidate = NextReading & Partial<Pick<WithheldReading, 'risk'>>;

export interface Choice {
  readonly next?: NextReading;
  /** Would be better, but for its risk. */
  readonly withheld?: WithheldReading;
}

/**
 * The reading to take next: the least effort, its own and that of the readings expected after it, among those
 * that cannot harm. Readings between two pins are only looked at where they could tell more for their effort
 * than the best at one pin: none tells more than its answers can hold.
 *
 * @param forRisk chances of the kinds of every post that risks are judged by, where they are not those asked about
 */
export function nextReading(held: Held, chances: Chances, state: MeterState, forRisk?: Float64Array): Choice {
  const kinds = kindChances(held, chances);
  const single = singleCandidates(held, kinds, state);
  const best = bestQuestion(single, LEAST_BITS);
  const worth = best === undefined ? 0 : best.gainBits / best.effort;
  const pairs = pairCandidates(held, chances, { kinds, forRisk: forRisk ?? kinds }, state, worth);
  const all = [...single, ...pairs];
  const told = bestQuestion(all, LEAST_BITS);
  // Once one layout stands out, or where two pins have to be joined, what is told for the effort decides.
  const isSingle = told !== undefined && single.includes(told);
  const next = isSingle ? (leastLeft(held, chances, single) ?? told) : told;
  const daring = bestQuestion(
    all.map((candidate) => ({ ...candidate, risk: undefined, of: candidate })),
    LEAST_BITS,
  )?.of;
  return {
    ...(next && { next: plain(next) }),
    ...(daring?.risk && { withheld: { ...plain(daring), risk: daring.risk } }),
  };
}

/** The reading at one pin with which the whole is expected to take least effort; none once a layout stands out. */
function leastLeft(held: Held, chances: Chances, single: readonly Candidate[]): Candidate | undefined {
  if (chances.layouts.some((chance) => chance >= IDENTIFIED)) return undefined;
  const gathered = byKind(held.header, chances);
  let best: Candidate | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of single) {
    const asked = askedBy(candidate.question);
    // A repeat tells only a part anew, which the guess of what is left does not know.
    if (candidate.gainBits <= LEAST_BITS || !('single' in asked)) continue;
    const again = timesAsked(held, candidate.question);
    const post = held.header.postOf.get(asked.pin) ?? 0;
    const cost = candidate.effort + readingsLeft(gathered, post, asked.single, IDENTIFIED) + again * REPEATED;
    if (cost >= least) continue;
    best = candidate;
    least = cost;
  }
  return best;
}

function plain({ question, gainBits, effort }: NextReading): NextReading {
  return { question, gainBits, effort };
}

function effortOf(asked: Single | Pair, question: MeterQuestion, state: MeterState): number {
  return EFFORT[asked] + (stateFor(question) === state ? 0 : SWITCH_OVER);
}

function timesAsked(held: Held, question: MeterQuestion): number {
  return held.asked.get(askedKey(askedBy(question)))?.readings.length ?? 0;
}

function singleCandidates(held: Held, kinds: Float64Array, state: MeterState): readonly Candidate[] {
  return held.header.posts.flatMap(({ label }, post) =>
    SINGLES.map((asked) => {
      const question = questionOf(asked, label, label);
      const gainBits = singleGain(kinds, post, asked) * AGAIN ** timesAsked(held, question);
      return { question, gainBits, effort: effortOf(asked, question, state) };
    }),
  );
}

function pairCandidates(
  held: Held,
  chances: Chances,
  { kinds, forRisk }: { readonly kinds: Float64Array; readonly forRisk: Float64Array },
  state: MeterState,
  worthToBeat: number,
): readonly Candidate[] {
  const { header } = held;
  const counting = countingLayouts(chances.layouts);
  const found: Candidate[] = [];
  for (const asked of PAIRS) {
    // Of the four answers to a touch only two can come on one pair of pins in one state.
    const mostBits = asked.startsWith('touch') ? 1 : Math.log2(PAIR_ANSWERS[asked].length);
    if (mostBits / EFFORT[asked] <= worthToBeat) continue;
    for (const [a, b] of pairsFor(asked, header.posts.length, kinds)) {
      const question = questionOf(asked, header.posts[a]?.label ?? '', header.posts[b]?.label ?? '');
      const gainBits =
        pairGain(header, chances.layouts, counting, asked, a, b) * AGAIN ** timesAsked(held, question);
      if (gainBits <= LEAST_BITS) continue;
      const risk = riskOf(question, forRisk, header.postOf);
      found.push({ question, gainBits, effort: effortOf(asked, question, state), ...(risk && { risk }) });
    }
  }
  return found;
}

/** Chance from which on a post is thought of as one end of a touch or of an LED tester. */
const WORTH_TRYING = 0.05;

/** The pairs of posts between which a reading could show something at all. */
function pairsFor(asked: Pair, posts: number, kinds: Float64Array): readonly (readonly [number, number])[] {
  const size = pinKinds().length;
  const chance = (post: number, is: (kind: ReturnType<typeof pinKinds>[number]) => boolean) =>
    pinKinds().reduce((sum, kind) => sum + (is(kind) ? (kinds[post * size + kind.index] ?? 0) : 0), 0) >
    WORTH_TRYING;
  const all = Array.from({ length: posts }, (_, at) => at);
  if (asked === 'continuity') return all.flatMap((a) => all.slice(a + 1).map((b) => [a, b] as const));
  if (asked.startsWith('touch')) {
    const answering = all.filter((post) => chance(post, ({ touched }) => touched !== undefined));
    const grounds = all.filter((post) => chance(post, ({ signals }) => signals.includes('ground')));
    return answering.flatMap((a) => grounds.filter((b) => b !== a).map((b) => [a, b] as const));
  }
  const sources = all.filter((post) => chance(post, ({ stub }) => stub.some((element) => 'rail' in element)));
  return sources.flatMap((a) => all.filter((b) => b !== a).map((b) => [a, b] as const));
}

/** In which state the machine is after the last reading. */
export function stateAfter(readings: readonly PinReading[]): MeterState {
  const last = readings.at(-1);
  return last === undefined ? 'unplugged' : stateFor(last);
}
