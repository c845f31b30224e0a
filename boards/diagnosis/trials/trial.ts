import { mayBeMisread } from '../../inference/belief';
import type { Fault } from '../faults/fault';
import type { Outcome } from '../predict';

/** What may come of a trial. The words are in words.ts. */
export type ResultId =
  | 'gone'
  | 'other'
  | 'same'
  | 'back'
  | 'not-back'
  | 'found'
  | 'not-found'
  | 'switch-off'
  | 'selector-wrong'
  | 'metal-in-port'
  | 'hangs'
  | 'no-click'
  | 'plug-off'
  | 'plug-elsewhere'
  | 'plug-turned'
  | 'plug-other-kind'
  | 'in-the-way'
  | 'burnt'
  | 'pinched'
  | 'socket-broken'
  | 'cap-off'
  | 'cap-elsewhere'
  | 'cooler-loose'
  | 'fan-stuck'
  | 'hub-unfed'
  | 'signals-joined'
  | 'wire-open'
  | 'came-loose'
  | 'loose-metal'
  | 'standoff'
  | 'list-wrong'
  | 'wires-exchanged'
  | 'there'
  | 'low'
  | 'none'
  | 'starts'
  | 'stays-off'
  | 'closes-on-press'
  | 'always-closed'
  | 'never-closes'
  | 'now-and-then';

export type Chances = Partial<Readonly<Record<ResultId, number>>>;

/** One thing to do next. */
export interface Trial {
  /** On the command line, and the same for ever. */
  readonly id: string;
  readonly results: readonly ResultId[];
  /** The result of a trial that has nothing to do with the trouble. */
  readonly tellsNothing: ResultId;
  /** Minutes for somebody who does it for the first time, with reading the steps and noting the result. Common practice, no source. */
  readonly effort: number;
  /** Whether the machine is started, or mains is on, during it. */
  readonly powered: boolean;
  /** Whether the checks name a danger in the wiring that it would start. */
  readonly danger?: true;
  /** The lead that it is about. */
  readonly lead?: string;
  /** What has to have come of another trial before this one has a meaning. */
  readonly after?: { readonly trial: string; readonly results: readonly ResultId[] };
  /** What comes of it if a fault, or two at once, go a certain way and nobody errs. What is not named does not come. */
  readonly chances: (faults: readonly Fault[], outcome: Outcome) => Chances;
}

export interface Tried {
  readonly trial: Trial;
  readonly result: ResultId;
}

/** What a start shows: the trouble is away, or there, the same or another one. */
const AWAY: Partial<Readonly<Record<ResultId, boolean>>> = {
  gone: true,
  'not-back': true,
  back: false,
  same: false,
  other: false,
};

/** Whether the trouble was away at the last start of those that were tried. */
export function worksNow({ tried = [] }: { readonly tried?: readonly Tried[] }): boolean {
  return tried.reduce((works, { result }) => AWAY[result] ?? works, false);
}

/** How often a trial is done or told wrongly; then any result is as likely. Common practice, no source. */
const DONE_WRONGLY = 0.04;

/** The chance of a result under a way in which a fault may go. */
export function chanceOf({ trial, result }: Tried, faults: readonly Fault[], outcome: Outcome): number {
  return mayBeMisread(trial.chances(faults, outcome)[result] ?? 0, 1 / trial.results.length, DONE_WRONGLY);
}

/** How often a trial has nothing to do with a trouble that is none of those known. Common practice, no source. */
const NOTHING_IF_NONE = 0.7;

/** The same where nothing known is wrong: most trials have nothing to do with it. */
export function chanceIfNone({ trial, result }: Tried): number {
  if (result === trial.tellsNothing) return NOTHING_IF_NONE;
  return (1 - NOTHING_IF_NONE) / (trial.results.length - 1);
}
