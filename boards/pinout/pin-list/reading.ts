import type { Job } from '../../signals/signal';
import type { SignalId } from '../../signals/signals';
import type { ListProblem } from './list-problem';

/** How the word of a pin was understood. */
export type HowRead =
  | 'exact' // a word of the list
  | 'normalised' // a word of the list but for spelling
  | 'described' // a known word inside a longer text
  | 'neighbours' // settled by what else stands on the header
  | 'guessed' // made likely by its neighbours, or a letter apart from a word of the list
  | 'two-meanings' // known words of which only one can be meant
  | 'chosen' // by the person
  | 'no-signal' // a word of the trade for which there is no signal
  | 'not-understood';

/** One pin of the list as it was read. */
export interface ReadPin {
  readonly label: string;
  /** Lines of the text it stands in, from 1. */
  readonly lines: readonly number[];
  readonly word: string;
  readonly how: HowRead;
  /** How sure the reading of the word is, 0 to 1; not how sure its source is. */
  readonly confidence: number;
  readonly missing?: true;
  readonly signal?: SignalId;
  readonly belongsTo?: Job;
  readonly channel?: string;
  /** What else the word, or another line about the pin, says it may be. */
  readonly or: readonly OtherReading[];
}

/** A further word about a pin; "unknown" where it was not understood. */
export interface OtherReading {
  readonly signal: SignalId;
  /** That no pin stands there; the signal is then "no connection". */
  readonly missing?: true;
  /** The word of another line. */
  readonly name?: string;
}

/** A list as it was read, pins in counting order of the connector; those it has not stand in a problem. */
export interface PinListReading {
  readonly pins: readonly ReadPin[];
  readonly problems: readonly ListProblem[];
}

/** Why a text was not read at all. */
export type ListRefusal =
  | { readonly code: 'too-long'; readonly length: number; readonly limit: number }
  | { readonly code: 'too-many-lines'; readonly lines: number; readonly limit: number }
  | { readonly code: 'nothing-to-read' }
  | { readonly code: 'nothing-readable'; readonly firstLine: string }
  | { readonly code: 'no-label-fits'; readonly labels: readonly string[]; readonly known: readonly string[] };
