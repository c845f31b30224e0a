import type { Cost } from './cost';

/** One way to deal with a slot: a seat for each of its plugs, or leaving them off. */
interface Choice {
  readonly cost: Cost;
}

/** What is decided as one: a plug, or the plugs of a lead that share a part. */
interface Slot {
  readonly choices: readonly Choice[];
  /** Slots of one name have equal choices in equal order and may change places without any effect. */
  readonly like?: string;
}

/** A choice by the places of its slot and of itself in their lists. */
export type ChoiceAt = readonly [slot: number, choice: number];

/**
 * A seating problem without its geometry: take one choice in every slot, none of them clashing with
 * another, at the least cost.
 */
export interface Instance {
  readonly slots: readonly Slot[];
  /** Pairs of choices of different slots that cannot both be taken. */
  readonly clashes: readonly (readonly [ChoiceAt, ChoiceAt])[];
}
