import type { Fault } from './faults/fault';
import { type Outcome, predict } from './predict';

/** What may be wrong as far as anything can tell it apart: one fault, or several of the same lead that show the same. */
export interface Hypothesis {
  /** One of those that it stands for; of two at once, one of each. */
  readonly faults: readonly Fault[];
  readonly outcomes: readonly Outcome[];
  /** Of all that it stands for, in the measure of the faults' weights. */
  readonly weight: number;
  /** Where the faults that it stands for are in the dictionary's list. */
  readonly members: readonly number[];
}

/** A list of faults with what each would show, worked out once. */
export interface Dictionary {
  readonly faults: readonly Fault[];
  readonly outcomes: readonly (readonly Outcome[])[];
  readonly hypotheses: readonly Hypothesis[];
}

export function dictionaryOf(faults: readonly Fault[]): Dictionary {
  const outcomes = faults.map(predict);
  return { faults, outcomes, hypotheses: hypothesesOf(faults, outcomes) };
}

interface Growing extends Hypothesis {
  weight: number;
  readonly members: number[];
}

/** Faults are alike to every look and trial where cause, lead and outcomes are the same. */
function hypothesesOf(
  faults: readonly Fault[],
  outcomes: readonly (readonly Outcome[])[],
): readonly Hypothesis[] {
  const found: Growing[] = [];
  const byOutcomes = new Map<readonly Outcome[], Growing[]>();
  faults.forEach((fault, at) => {
    const own = outcomes[at] ?? [];
    const near = byOutcomes.get(own) ?? [];
    byOutcomes.set(own, near);
    const alike = near.find(({ faults: [first] }) => first && isAlike(first, fault));
    if (alike) {
      alike.weight += fault.weight;
      alike.members.push(at);
      return;
    }
    const hypothesis = { faults: [fault], outcomes: own, weight: fault.weight, members: [at] };
    near.push(hypothesis);
    found.push(hypothesis);
  });
  return found;
}

function isAlike(first: Fault, other: Fault): boolean {
  return first.cause === other.cause && first.lead !== undefined && first.lead === other.lead;
}
