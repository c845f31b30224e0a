import type { Turn } from '../../base/units';
import type { Powered } from '../../document/pin-reading';
import type { SignalId } from '../../signals/signals';

/** A reading that could be taken: one of the sheet's kinds, without its answer. */
export type MeterQuestion =
  | { readonly kind: 'ohms'; readonly pin: string }
  | { readonly kind: 'volts'; readonly pin: string; readonly supply: Powered }
  | { readonly kind: 'continuity'; readonly pins: readonly [string, string] }
  | { readonly kind: 'touch'; readonly pins: readonly [string, string]; readonly supply: Powered }
  | { readonly kind: 'lamp'; readonly plus: string; readonly minus: string; readonly supply: Powered };

/** Why a reading must not be taken, as long as it could be so by more than a chance of 1 %. */
export type MeterRisk =
  /** Touching it could close a supply on something. */
  | { readonly code: 'may-be-supply'; readonly pin: string; readonly chance: number }
  /** It could be a pin that a touch drives too hard, or that makes the board forget its settings. */
  | { readonly code: 'may-not-be-touched'; readonly pin: string; readonly chance: number }
  /** An LED tester could meet more than it stands. */
  | { readonly code: 'may-be-too-high'; readonly pin: string; readonly chance: number };

/** A reading that may be taken next: what it is expected to tell, and what it costs. */
export interface NextReading {
  readonly question: MeterQuestion;
  readonly gainBits: number;
  /** In units of one ohm reading on an unplugged board. */
  readonly effort: number;
}

/** A reading that would tell more for its effort than the one proposed, and is not proposed for its risk. */
export interface WithheldReading extends NextReading {
  readonly risk: MeterRisk;
}

/** A signal, the chance of it, and the other signals that no reading tells from it. */
export interface SignalChance {
  readonly signal: SignalId;
  readonly chance: number;
  readonly alike: readonly SignalId[];
}

export interface PinChances {
  readonly pin: string;
  /** Most probable first; they add up to 1. Signals that no reading tells apart share a row. */
  readonly chances: readonly SignalChance[];
  /** The first of them, when its chance is above 99 %. */
  readonly certain?: SignalChance;
}

/** Where a whole layout is from. */
export type LayoutOrigin =
  /** A connector of the library, turned and then mirrored left to right as it lies on this grid. */
  | {
      readonly kind: 'library';
      readonly type: string;
      readonly title: string;
      readonly turn: Turn;
      readonly mirrored: boolean;
    }
  /** Switches, LEDs and a speaker put beside each other as panel headers do. */
  | { readonly kind: 'panel' };

export interface LayoutChance {
  readonly chance: number;
  readonly origin: LayoutOrigin;
  /** Every pin that stands, in counting order. */
  readonly pins: readonly { readonly pin: string; readonly signal: SignalId }[];
}

/** Readings, by their place in the sheet's list, that cannot all be true. */
export interface MeterContradiction {
  readonly why: 'one-pin' | 'two-pins' | 'no-such-reading' | 'no-pin-there';
  readonly readings: readonly number[];
  readonly pins: readonly string[];
}

/** How far the readings have come. */
export type MeterVerdict =
  /** Nothing was measured yet. */
  | 'no-readings'
  /** More readings would tell more. */
  | 'open'
  /** One layout has a chance of 95 % or more. */
  | 'identified'
  /** Two layouts remain that no safe reading tells apart. */
  | 'two-remain'
  /** Several layouts remain, and no safe reading tells more. */
  | 'several-remain'
  /** Most likely no known layout and no panel as they are built: the pins are told one by one. */
  | 'none-of-these';

/** What the readings of a connector say. */
export interface Identification {
  readonly verdict: MeterVerdict;
  /** Every pin that stands, in counting order. */
  readonly pins: readonly PinChances[];
  /** Whole layouts, most probable first, at most a dozen; those no reading tells apart are one. */
  readonly layouts: readonly LayoutChance[];
  /** Chance that the pins follow no layout that is known or built like a panel. */
  readonly noneOfThese: number;
  /** The two most probable layouts, where they differ, and the reading that tells them apart best. */
  readonly remaining?: {
    readonly pins: readonly string[];
    readonly reading?: NextReading;
  };
  readonly next?: NextReading;
  readonly withheld?: WithheldReading;
  readonly contradictions: readonly MeterContradiction[];
  /** Smallest sets of readings that would have to be wrong for the rest to agree: measure these again. */
  readonly suspects: readonly (readonly number[])[];
  /** How the panel layouts were counted: one by one, or by drawing so many by chance. */
  readonly counted: { readonly by: 'one by one' | 'drawing'; readonly layouts: number };
}

/** Why a connector cannot be identified. Closed: words.ts has words for each. */
export type MeterProblem =
  | { readonly code: 'no-pins' }
  | { readonly code: 'too-many-pins'; readonly pins: number; readonly limit: number };
