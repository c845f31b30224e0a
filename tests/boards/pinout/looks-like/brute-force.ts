import type { Pin } from '../../../../boards/document/connector';
import type { Layout } from '../../../../boards/pinout/looks-like/known-layout';
import { signalOf } from '../../../../boards/signals/signals';
import { HANDLINGS, type Handling, handled, tableOf } from './headers';

/** One way to lay a layout over a header, judged from the words of the sheet alone. */
export interface SlowMatch {
  readonly handling: Handling;
  readonly offset: readonly [row: number, col: number];
  readonly score: number;
  readonly agreed: number;
  /** Pins that agree, less pins that differ. */
  readonly balance: number;
}

type Place = Pin | undefined;

/**
 * The slow and obvious way, as the domain's own comments state it: handle the whole table in each of the
 * eight ways, slide it over every offset, read both sheets anew at every place, and keep every result.
 */
function everyMatch(here: Layout, there: Layout): readonly SlowMatch[] {
  const mine = tableOf(here);
  return HANDLINGS.flatMap((handling) => {
    const theirs = handled(tableOf(there), handling);
    return offsets(mine, theirs).map((offset) => ({ handling, offset, ...judged(mine, theirs, offset) }));
  });
}

/** Whether the best way is one that a person would be shown: 0.65 at least, and more that agrees than differs. */
export function isLike(here: Layout, there: Layout): boolean {
  const best = bestMatch(here, there);
  if (best === undefined || best.score < 0.65) return false;
  return everyMatch(here, there).some(
    ({ score, agreed, balance }) =>
      gap(score - best.score) === 0 && gap(agreed - best.agreed) === 0 && balance > 0,
  );
}

/** The best of all ways: the higher score, then the more sureness that agrees. */
export function bestMatch(here: Layout, there: Layout): SlowMatch | undefined {
  return [...everyMatch(here, there)].sort((a, b) => gap(b.score - a.score) || gap(b.agreed - a.agreed))[0];
}

function gap(difference: number): number {
  return Math.abs(difference) < 1e-9 ? 0 : difference;
}

function sizes(table: readonly (readonly Place[])[]): readonly [rows: number, cols: number] {
  return [table.length, table[0]?.length ?? 0];
}

function offsets(mine: readonly Place[][], theirs: readonly Place[][]): (readonly [number, number])[] {
  const [rows, cols] = sizes(mine);
  const [high, wide] = sizes(theirs);
  if (Math.min(rows * cols, high * wide) * 2 < Math.max(rows * cols, high * wide)) return [];
  const found: (readonly [number, number])[] = [];
  for (let row = -64; row <= 64; row++)
    for (let col = -64; col <= 64; col++) {
      const inside = row >= 0 && col >= 0 && row + high <= rows && col + wide <= cols;
      const round = row <= 0 && col <= 0 && row + high >= rows && col + wide >= cols;
      if (inside || round) found.push([row, col]);
    }
  return found;
}

function judged(
  mine: readonly Place[][],
  theirs: readonly Place[][],
  [down, along]: readonly [number, number],
) {
  let sum = 0;
  let weights = 0;
  let agreed = 0;
  let balance = 0;
  mine.forEach((row, r) => {
    row.forEach((pin, c) => {
      if (word(pin) === 'unknown') return;
      const other = theirs[r - down] === undefined ? 'outside' : at(theirs, r - down, c - along);
      const says = other === 'outside' ? 'unknown' : word(other);
      const weight =
        sure(pin) *
        (says === 'unknown' || other === 'outside' ? 0.8 : sure(other)) *
        (word(pin) === 'gap' || says === 'gap' ? 3 : 1);
      weights += weight;
      if (says === 'unknown') sum += weight / 4;
      else if (says === word(pin)) {
        sum += weight;
        agreed += sure(pin);
        balance += 1;
      } else if (other !== 'outside' && alike(pin, other)) sum += weight / 2;
      else balance -= 1;
    });
  });
  const [rows, cols] = sizes(mine);
  const [high, wide] = sizes(theirs);
  const common = Math.min(rows * cols, high * wide) / Math.max(rows * cols, high * wide);
  return { score: weights === 0 ? 0 : (sum / weights) * (0.5 + common / 2), agreed, balance };
}

function at(table: readonly Place[][], row: number, col: number): Place | 'outside' {
  const line = table[row];
  return line !== undefined && col >= 0 && col < line.length ? line[col] : 'outside';
}

function word(pin: Place): string {
  return pin === undefined || pin.missing === true ? 'gap' : (pin.signal ?? 'unknown');
}

function sure(pin: Place): number {
  if (pin === undefined) return 1;
  return Math.max(0.05, pin.confidence ?? (pin.source?.kind === 'guessed' ? 0.3 : 0.8));
}

const PAIRED = ['ground', 'feed', 'sink', 'input', 'output'];

/** The wires of one pair, as a switch or a lamp has; or two lines of data, of sound, two supplies. */
function oneLine(a: string, b: string): boolean {
  return a === b || (PAIRED.includes(a) && PAIRED.includes(b));
}

/** Of one pair, of one effect on the circuit, or named by another source of either side. */
function alike(a: Place, b: Place): boolean {
  if (a?.signal === undefined || b?.signal === undefined || a.missing || b.missing) return false;
  const [mine, theirs] = [signalOf(a.signal), signalOf(b.signal)];
  const [myJob, theirJob] = [mine.job ?? a.belongsTo, theirs.job ?? b.belongsTo];
  if (myJob !== undefined && myJob === theirJob && oneLine(mine.nature, theirs.nature)) return true;
  if (mine.nature === theirs.nature) {
    if (mine.nature === 'ground' || mine.nature === 'open') return true;
    if (mine.nature === 'supply' && mine.volts === theirs.volts) return true;
  }
  return [a.alternatives, b.alternatives].some((others, side) =>
    others?.some(({ signal }) => signal === (side === 0 ? b : a).signal),
  );
}
