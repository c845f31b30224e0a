import type { Corner } from './corner';
import { GROUND } from './device';
import type { Element, Factor } from './elements';
import { Groups } from './islands';
import type { MachineState } from './machine-state';
import { type Solution, solve } from './solve';

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

/** The part of a state that a group can feel, as a name. */
function stateSeenBy({ factors }: Group, { supply, held, drive, attached }: MachineState): string {
  const seen = [
    factors.has('power') && held.includes('power') && 'power',
    factors.has('reset') && held.includes('reset') && 'reset',
    factors.has('drive') && drive,
    factors.has('attached') && attached && 'attached',
  ];
  return `${supply} ${seen.filter(Boolean).join(' ')}`;
}

/** Solves a group when first asked, and remembers it for every state that the group cannot tell apart. */
export function solverOf(group: Group): (state: MachineState, corner: Corner) => Solution {
  const solved = new Map<string, Solution>();
  return (state, corner) => {
    const key = `${stateSeenBy(group, state)}/${corner.board}/${corner.lead}`;
    const known = solved.get(key);
    if (known) return known;
    const solution = solve(group.elements.flatMap((element) => element.devices(state, corner)));
    solved.set(key, solution);
    return solution;
  };
}
