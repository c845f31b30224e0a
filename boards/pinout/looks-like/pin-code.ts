import type { Pin } from '../../document/connector';
import { JOBS, type Signal } from '../../signals/signal';
import { SIGNALS, type SignalId } from '../../signals/signals';

/** What is known of one position, in small whole numbers that can be compared quickly. */
export interface PinCode {
  /** UNKNOWN, GAP, or a number for the signal. */
  readonly signal: number;
  /** A number for the job it belongs to; 0 for none. */
  readonly job: number;
  /** A number for the kind of line, of which a job has a pair: of switches and lamps, of data, of sound. */
  readonly line: number;
  /** The same for signals that do the same to a circuit: grounds, rails of one voltage, open pins; 0 for none. */
  readonly kin: number;
  /** What other sources say of it, as numbers for signals. */
  readonly others: readonly number[];
  /** From 0.05 to 1. */
  readonly sureness: number;
}

export const UNKNOWN = 0;
/** No pin stands there, or the grid has no position. */
export const GAP = 1;

/** Where nobody said how sure it is: as read somewhere, or as guessed. */
export const UNSAID = { read: 0.8, guessed: 0.3 } as const;
/** Even hearsay weighs something. */
const LEAST = 0.05;

const NO_POSITION: PinCode = { signal: GAP, job: 0, line: 0, kin: 0, others: [], sureness: 1 };

type SignalCode = Pick<PinCode, 'signal' | 'job' | 'line' | 'kin'>;

/** The two wires of a switch or a lamp are one kind of line, whichever end the board holds. */
const LINES: Readonly<Record<Signal['nature'], number>> = {
  unknown: 0,
  open: 1,
  supply: 2,
  data: 3,
  analogue: 4,
  ground: 5,
  feed: 5,
  sink: 5,
  input: 5,
  output: 5,
};

const kinNames: readonly string[] = [...new Set(SIGNALS.flatMap((signal) => kinOf(signal) ?? []))];
const codes: ReadonlyMap<SignalId, SignalCode> = new Map(
  SIGNALS.map((row: Signal & { readonly id: SignalId }, at) => [
    row.id,
    {
      signal: row.nature === 'unknown' ? UNKNOWN : GAP + 1 + at,
      job: row.job === undefined ? 0 : 1 + JOBS.indexOf(row.job),
      line: LINES[row.nature],
      kin: 1 + kinNames.indexOf(kinOf(row) ?? ''),
    },
  ]),
);

function kinOf({ nature, volts }: Signal): string | undefined {
  if (nature === 'supply') return `supply ${volts}`;
  return nature === 'ground' || nature === 'open' ? nature : undefined;
}

function codeOf(id: SignalId): SignalCode {
  const code = codes.get(id);
  if (code === undefined) throw new Error(`No signal ${id}`);
  return code;
}

/** The code of a pin; of a place where the grid has no position when there is none. */
export function pinCode(pin: Pin | undefined): PinCode {
  if (pin === undefined) return NO_POSITION;
  const sureness = surenessOf(pin);
  if (pin.missing === true) return { ...NO_POSITION, sureness };
  const { signal, job, line, kin } = codeOf(pin.signal ?? 'unknown');
  return {
    signal,
    job: job === 0 && pin.belongsTo !== undefined ? 1 + JOBS.indexOf(pin.belongsTo) : job,
    line,
    kin,
    others: pin.alternatives?.map((other) => (other.missing ? GAP : codeOf(other.signal).signal)) ?? [],
    sureness,
  };
}

function surenessOf({ confidence, source }: Pin): number {
  const unsaid = source?.kind === 'guessed' ? UNSAID.guessed : UNSAID.read;
  return Math.max(LEAST, confidence ?? unsaid);
}

/** Whether it is known what a pin is, or that none stands there. */
export function isKnown(pin: Pin): boolean {
  return pin.missing === true || (pin.signal !== undefined && pin.signal !== 'unknown');
}
