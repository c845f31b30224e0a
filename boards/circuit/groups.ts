import { byIdentity } from '../base/by-identity';
import type { Corner } from './corner';
import { GROUND } from './device';
import { type Element, type Factor, netlistOf } from './elements';
import { Groups } from './islands';
import type { MachineState } from './machine-state';
import { type Solution, solve } from './solve';
import { feltThrough } from './state-code';

/** Elements that can meet in some state, and so are solved together in every state. */
export interface Group {
  readonly elements: readonly Element[];
  readonly factors: ReadonlySet<Factor>;
}

/** Cuts the elements of a build into groups that have no influence on each other in any state. */
export function groupsOf(elements: readonly Element[]): readonly Group[] {
  const pieces = new Groups();
  for (const { nodes } of elements) {
    const [first, ...others] = nodes.filter((node) => node !== GROUND);
    if (first !== undefined) for (const other of others) pieces.join(first, other);
  }
  const members = new Map<string, { elements: Element[]; factors: Set<Factor> }>();
  for (const element of elements) {
    const [first] = element.nodes;
    if (first === undefined) continue;
    const root = pieces.rootOf(first);
    const known = members.get(root) ?? { elements: [], factors: new Set() };
    members.set(root, known);
    known.elements.push(element);
    for (const factor of element.factors) known.factors.add(factor);
  }
  return [...members.values()];
}

/** A group in every state that it can tell apart, solved when first asked. */
export interface SolvedGroup {
  readonly solution: (state: MachineState, corner: Corner) => Solution;
  /** One state for each that the group can tell apart. */
  readonly states: readonly MachineState[];
}

/**
 * Solves a group when first asked, and remembers it for every state that the group cannot tell
 * apart. A group of the very same elements is the same group: most stay from one edit to the next.
 */
export const solvedGroup = byIdentity(
  ({ elements, factors }: Group): SolvedGroup => {
    const felt = feltThrough(factors);
    const solved = new Map<Corner, Map<MachineState, Solution>>();
    return {
      states: felt.states,
      solution: (state, corner) => {
        const own = felt.as(state);
        const atCorner = solved.get(corner) ?? new Map<MachineState, Solution>();
        solved.set(corner, atCorner);
        const known = atCorner.get(own);
        if (known) return known;
        const solution = solve(netlistOf(elements, own, corner));
        atCorner.set(own, solution);
        return solution;
      },
    };
  },
  ({ elements }) => elements,
);
