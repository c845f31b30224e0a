import { encodeCopy } from '../../electron/host/recovery-copy';
import { Dice } from '../boards/dice';
import { damagedBytes } from './damage/bytes';
import { bentText } from './damage/tree';
import { judge } from './judges';
import { KINDS, type Kind, originals } from './originals';

export interface MutantRun {
  readonly seed: number;
  /** The number of the first mutant, and how many there are to be from there on. */
  readonly from: number;
  readonly count: number;
  /** Texts of frozen documents that hold every field, by kind. */
  readonly frozen: Readonly<Record<'build' | 'board' | 'case', readonly string[]>>;
}

export interface MutantFailure {
  readonly number: number;
  readonly kind: Kind;
  readonly reason: string;
  /** The damaged file in base64, to be kept. */
  readonly data: string;
}

export interface MutantReport {
  /** By kind, then by what came of it: how many. */
  readonly outcomes: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly failures: readonly MutantFailure[];
  /** How many opened documents were also shown, checked and printed. */
  readonly used: number;
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
const FAILURES_KEPT = 50;

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
    const bytes = mutant(kind, sound, dice);
    const thorough = dice.oneIn(USED_ONE_IN);
    const start = performance.now();
    let outcome = 'threw';
    try {
      outcome = await judge(kind, bytes, thorough);
    } catch (thrown) {
      const reason = thrown instanceof Error ? `${thrown.message} ${whereOf(thrown)}` : String(thrown);
      if (failures.length < FAILURES_KEPT)
        failures.push({ number, kind, reason, data: Buffer.from(bytes).toString('base64') });
    }
    const tookMs = performance.now() - start;
    if (tookMs > slowestMs) [slowestMs, slowest] = [tookMs, number];
    if (thorough && outcome === 'opened') used += 1;
    const ofKind = outcomes[kind] ?? {};
    outcomes[kind] = ofKind;
    ofKind[outcome] = (ofKind[outcome] ?? 0) + 1;
  }
  return { outcomes, failures, used, slowestMs, slowest };
}

function mutant(kind: Kind, sound: Readonly<Record<Kind, readonly Uint8Array[]>>, dice: Dice): Uint8Array {
  const bytes = dice.pick(sound[kind]) ?? new Uint8Array();
  const otherKind = dice.oneIn(2) ? kind : (dice.pick(KINDS) ?? kind);
  const other = dice.pick(sound[otherKind]) ?? bytes;
  const isTree =
    kind === 'build' || kind === 'board' || kind === 'case' || kind === 'settings' || kind === 'recent files';
  if (kind === 'recovery copy' && dice.oneIn(2)) return wholeCopy(sound, dice);
  if (!isTree || dice.oneIn(3)) return damagedBytes(bytes, other, dice);
  const tree = dice.pick(sound[dice.pick(['build', 'board', 'case'] as const) ?? 'build']) ?? bytes;
  return new TextEncoder().encode(bentText(textOf(bytes), textOf(tree), dice));
}

/** A recovery copy that is whole and holds a build that is not sound: its own hash does not speak of that. */
function wholeCopy(sound: Readonly<Record<Kind, readonly Uint8Array[]>>, dice: Dice): Uint8Array {
  const build = textOf(dice.pick(sound.build) ?? new Uint8Array());
  const owner = { pid: 1, started: null };
  const note = { owner, path: null, stamp: null, name: 'Bench', serial: 1, savedMs: 1, changes: 1 };
  return new TextEncoder().encode(encodeCopy(note, bentText(build, build, dice)));
}

function textOf(bytes: Uint8Array): string {
  return new TextDecoder().decode(bytes);
}

function whereOf({ stack = '' }: Error): string {
  return stack
    .split('\n')
    .slice(1, 4)
    .map((line) => line.trim())
    .join(' < ');
}
