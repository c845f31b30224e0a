import { Dice } from '../boards/dice';
import { damaged } from './damage/damaged';
import { type MutantFailure, noteFailure } from './failures';
import { judge } from './judges';
import { type FrozenTexts, type Kind, originals } from './originals';
import { beginMeasure } from './took';

export interface MutantRun {
  readonly seed: number;
  /** The number of the first mutant, and how many there are to be from there on. */
  readonly from: number;
  readonly count: number;
  /** Texts of frozen documents that hold every field, by kind. */
  readonly frozen: FrozenTexts;
}

export interface MutantReport {
  /** By kind, then by what came of it: how many. */
  readonly outcomes: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly failures: readonly MutantFailure[];
  /** How many opened documents were also shown, checked and printed. */
  readonly used: number;
  /** The most that one took, and the number of that. */
  readonly slowestMs: number;
  readonly slowest: number;
}

/** Out of twenty: documents most of all, since most of the program reads them. */
const SHARES: readonly Kind[] = [
  ...Array<Kind>(6).fill('build'),
  ...Array<Kind>(3).fill('board'),
  ...Array<Kind>(3).fill('case'),
  ...Array<Kind>(2).fill('photo'),
  ...Array<Kind>(2).fill('pin list'),
  'copied pins',
  'recovery copy',
  'settings',
  'recent files',
];
/** Showing, checking and printing costs fifty times what opening does. */
const USED_ONE_IN = 6;

/**
 * Damages sound files one after the other and has the program read them. Each depends on the seed and its
 * number alone, so that one can be had again by itself.
 *
 * @param began told of the number of each before it is read
 */
export async function runMutants(
  { seed, from, count, frozen }: MutantRun,
  began: (number: number) => void = () => undefined,
): Promise<MutantReport> {
  const sound = originals(frozen);
  const outcomes: Record<string, Record<string, number>> = {};
  const failures: MutantFailure[] = [];
  let [used, slowestMs, slowest] = [0, 0, from];
  for (let number = from; number < from + count; number++) {
    began(number);
    const dice = new Dice(Math.imul(seed, 0x9e3779b1) ^ Math.imul(number, 0x85ebca6b));
    const kind = dice.pick(SHARES) ?? 'build';
    const bytes = damaged(kind, dice.pick(sound[kind]) ?? new Uint8Array(), sound, dice);
    const thorough = dice.oneIn(USED_ONE_IN);
    const took = beginMeasure();
    let outcome = 'threw';
    try {
      outcome = await judge(kind, bytes, thorough);
    } catch (thrown) {
      noteFailure(failures, { number, kind, bytes }, thrown);
    }
    const tookMs = took();
    if (tookMs > slowestMs) [slowestMs, slowest] = [tookMs, number];
    if (thorough && outcome === 'opened') used += 1;
    const ofKind = outcomes[kind] ?? {};
    outcomes[kind] = ofKind;
    ofKind[outcome] = (ofKind[outcome] ?? 0) + 1;
  }
  return { outcomes, failures, used, slowestMs, slowest };
}
