import { countsFrom, type LogEntry } from '../../document/trouble';
import { type ObservationId, observationNamed } from '../observations/observations';
import type { Evidence } from '../posterior';
import type { Trial, Tried } from '../trials/trial';

/** What a line of a log tells of the fault. */
export type Told =
  | { readonly kind: 'noticed'; readonly id: ObservationId; readonly answer: 'yes' | 'no' }
  | { readonly kind: 'tried'; readonly tried: Tried };

/** A line of a log as this version understands it. */
export interface ReadLine {
  /** Its place in the log. */
  readonly at: number;
  readonly entry: LogEntry;
  /** What its codes mean; undefined for a remark, and for codes that nothing answers to. */
  readonly told?: Told;
  /** Whether its codes are none that this version has, for this wiring. */
  readonly unknown: boolean;
  /** Whether it stands after the last time that it was started over. */
  readonly current: boolean;
  /** Whether it tells something, and neither a fresh start nor a later line has taken its place. */
  readonly counts: boolean;
}

/** Reads a log. Of a trial that was made twice the last result counts; an answer said both ways counts both ways. */
export function readLog(log: readonly LogEntry[], trials: readonly Trial[]): readonly ReadLine[] {
  const from = countsFrom(log);
  return log.map((entry, at) => {
    const told = toldBy(entry, trials);
    const current = at >= from;
    const replaced = log.slice(at + 1).some((later) => replaces(later, entry));
    return {
      at,
      entry,
      ...(told && { told }),
      unknown: told === undefined && (entry.kind === 'noticed' || entry.kind === 'tried'),
      current,
      counts: current && told !== undefined && !replaced,
    };
  });
}

/** What the lines that count tell, one after the other. */
export function tellingLines(lines: readonly ReadLine[]): readonly TellingLine[] {
  return lines.flatMap((line) => (line.told && line.counts ? [{ at: line.at, told: line.told }] : []));
}

/** A line that counts, by its place in the log. */
export interface TellingLine {
  readonly at: number;
  readonly told: Told;
}

/** The same as inference takes it. */
export function evidenceOf(tolds: readonly Told[]): Required<Evidence> {
  const answered = (answer: 'yes' | 'no') =>
    tolds.flatMap((told) => (told.kind === 'noticed' && told.answer === answer ? [told.id] : []));
  return {
    seen: answered('yes'),
    notSeen: answered('no'),
    tried: tolds.flatMap((told) => (told.kind === 'tried' ? [told.tried] : [])),
  };
}

function toldBy(entry: LogEntry, trials: readonly Trial[]): Told | undefined {
  switch (entry.kind) {
    case 'noticed': {
      const observation = observationNamed(entry.what);
      return observation && { kind: 'noticed', id: observation.id, answer: entry.answer };
    }
    case 'tried': {
      const trial = trials.find(({ id }) => id === entry.trial);
      const result = trial?.results.find((each) => each === entry.result);
      return trial && result && { kind: 'tried', tried: { trial, result } };
    }
    case 'remark':
    case 'started-over':
      return undefined;
  }
}

/** The same thing said once more. */
function replaces(later: LogEntry, entry: LogEntry): boolean {
  if (later.kind === 'tried' && entry.kind === 'tried') return later.trial === entry.trial;
  if (later.kind !== 'noticed' || entry.kind !== 'noticed') return false;
  const [a, b] = [observationNamed(later.what)?.id, observationNamed(entry.what)?.id];
  return a !== undefined && a === b && later.answer === entry.answer;
}
