import type { Job } from '../../signals/signal';
import type { SignalId } from '../../signals/signals';
import { HEADER_RULES, type HeaderRule } from './header-rules';
import { meaningOf, type Said } from './meanings';
import { jobOf, type Settling } from './settling';
import { settleTwins } from './twins';
import type { Understood } from './understood';

/** Each rule may make another fit; the longest chain there is has three. */
const ROUNDS = 4;

/** What each pin is said to be, once every word that says too little has been read beside its neighbours. */
export function settle(
  pins: readonly Omit<Settling, 'said' | 'by'>[],
  jobs: readonly Job[],
): readonly Settling[] {
  let now: readonly Settling[] = pins.map((pin) => ({ ...pin, said: alone(pin.meant), by: 'word' }));
  for (let round = 0; round < ROUNDS; round++) {
    const before = now;
    const header: Header = { pins: now, jobs, counts: countsOf(now), at: placesOf(now) };
    now = now.map((pin) => settled(pin, header));
    if (now.every((pin, at) => pin === before[at])) break;
  }
  return settleTwins(now);
}

function alone(meant: Understood | undefined): Said | undefined {
  return meant && meaningOf(meant.means)[meant.sign ?? 'bare'];
}

interface Header {
  readonly pins: readonly Settling[];
  readonly jobs: readonly Job[];
  /** How many pins are said to be each thing, and have a part in each job. */
  readonly counts: ReadonlyMap<Said | Job, number>;
  /** Every pin by its row and column. */
  readonly at: ReadonlyMap<string, Settling>;
}

function placesOf(pins: readonly Settling[]): Header['at'] {
  return new Map(pins.flatMap((pin) => (pin.cell ? [[pin.cell.join(), pin] as const] : [])));
}

function countsOf(pins: readonly Settling[]): Header['counts'] {
  const counts = new Map<Said | Job, number>();
  for (const { said } of pins) {
    const job = jobOf(said);
    if (said !== undefined) counts.set(said, (counts.get(said) ?? 0) + 1);
    if (job !== undefined) counts.set(job, (counts.get(job) ?? 0) + 1);
  }
  return counts;
}

function settled(pin: Settling, header: Header): Settling {
  const rule = HEADER_RULES.find((each) => fits(each, pin, header));
  if (rule === undefined || pin.said === rule.becomes) return pin;
  return { ...pin, said: rule.becomes, by: rule.sure ? 'neighbours' : 'guess' };
}

function fits(rule: HeaderRule, pin: Settling, { pins, jobs, counts, at }: Header): boolean {
  const { meant } = pin;
  if (meant === undefined || !rule.words.includes(meant.means)) return false;
  if (rule.sign !== undefined && meant.sign !== rule.sign) return false;
  if (rule.atMost !== undefined && pins.length > rule.atMost) return false;
  const own = (one: Said | Job) => (one === pin.said || one === jobOf(pin.said) ? 1 : 0);
  const many = (ones: readonly (Said | Job)[]) =>
    ones.reduce((sum, one) => sum + (counts.get(one) ?? 0) - own(one), 0);
  const beside = many(rule.beside);
  const named = rule.within === 'header' && jobs.some((job) => rule.beside.includes(job));
  if ((beside === 0 && !named) || many(rule.unless ?? []) > beside) return false;
  return rule.within === 'header' || inLine(rule, pin, at);
}

const BETWEEN: ReadonlySet<Said | undefined> = new Set<SignalId | 'no-pin' | undefined>([
  'no-connection',
  'no-pin',
  'ground',
  'reserved',
  undefined,
]);

/** How far a lead of a single row reaches. */
const REACH = 3;

const WAYS = [
  [0, 1],
  [0, -1],
  [1, 0],
  [-1, 0],
] as const;

/** Whether what the rule asks for stands in the row or the column of the pin with nothing in use between. */
function inLine({ beside }: HeaderRule, { cell }: Settling, at: Header['at']): boolean {
  if (cell === undefined) return false;
  const [row, col] = cell;
  return WAYS.some(([down, along]) => {
    for (let step = 1; step <= REACH; step++) {
      const said = at.get(`${row + step * down},${col + step * along}`)?.said;
      if (beside.some((one) => one === said)) return true;
      if (!BETWEEN.has(said)) return false;
    }
    return false;
  });
}
