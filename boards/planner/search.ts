import { addCosts, type Cost } from './cost';
import type { Instance } from './instance';
import { type Packed, packed } from './packed';
import { type Component, components } from './reduce';
import { searchComponent } from './search-component';

export interface SearchLimits {
  /** Branches looked at, over all parts of the problem, before it is given up. */
  readonly steps: number;
}

export const SEARCH_LIMITS: SearchLimits = { steps: 500_000 };

/**
 * The answer of a search. `best`: proved, nothing costs less. `gave-up`: the steps ran out; `choices`
 * is the best seen, if any was, and no arrangement costs less than `bound`. `impossible`: every
 * arrangement has two choices that clash.
 */
export type Search =
  | {
      readonly kind: 'best';
      readonly choices: readonly number[];
      readonly cost: Cost;
      readonly steps: number;
    }
  | {
      readonly kind: 'gave-up';
      readonly choices: readonly number[] | undefined;
      readonly cost: Cost | undefined;
      readonly bound: Cost;
      readonly steps: number;
    }
  | { readonly kind: 'impossible'; readonly steps: number };

/**
 * One choice for every slot, none clashing with another, at the least cost: branch and bound with
 * propagation, each independent part on its own. The same instance always gives the same answer.
 *
 * Throws a RangeError on costs that are not whole numbers from 0.
 *
 * @param tell is told now and then how many branches have been looked at
 */
export function search(
  instance: Instance,
  limits: SearchLimits = SEARCH_LIMITS,
  tell: (branches: number) => void = () => undefined,
): Search {
  const flat = packed(instance);
  const choices = new Array<number>(flat.slotCount).fill(0);
  const bounds: Cost[] = [];
  let steps = 0;
  let whole = true;
  let proven = true;
  const parts = components(flat).toSorted((a, b) => a.slots.length - b.slots.length);
  for (const component of parts) {
    if (component.choices.some((own) => own.length === 0)) return { kind: 'impossible', steps };
    // The smallest first: what they leave over is for the great ones.
    const before = steps;
    const found =
      settled(flat, component) ??
      searchComponent(flat, component, Math.max(0, limits.steps - before), (more) => tell(before + more));
    steps += found.steps;
    if (found.kind === 'impossible') return { kind: 'impossible', steps };
    bounds.push(flat.unpack(found.bound));
    if (found.kind === 'gave-up') proven = false;
    if (found.chosen === undefined) whole = false;
    else
      component.slots.forEach((slot, at) => {
        choices[slot] = (found.chosen?.[at] ?? 0) - (flat.firstOf[slot] ?? 0);
      });
  }
  const cost = whole
    ? addCosts(instance.slots.map((slot, at) => costOf(slot.choices[choices[at] ?? 0]?.cost)))
    : undefined;
  if (proven && cost) return { kind: 'best', choices, cost, steps };
  return { kind: 'gave-up', choices: whole ? choices : undefined, cost, bound: addCosts(bounds), steps };
}

/** A part of one slot needs no search: its first choice is its cheapest. */
function settled(flat: Packed, { slots, choices }: Component) {
  const first = choices[0]?.[0];
  if (slots.length !== 1 || first === undefined) return undefined;
  const bound = flat.costs.subarray(first * flat.width, (first + 1) * flat.width);
  return { kind: 'best' as const, chosen: [first], bound, steps: 0 };
}

function costOf(cost: Cost | undefined): Cost {
  if (cost === undefined) throw new Error('A choice that is not in its slot');
  return cost;
}
