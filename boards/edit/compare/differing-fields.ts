import { same } from '../same';

/** The names under which two pieces of plain data say different things, in the order of the first. */
export function differingFields(mine: object, theirs: object, but: readonly string[]): readonly string[] {
  const [ours, others] = [new Map(Object.entries(mine)), new Map(Object.entries(theirs))];
  return [...new Set([...ours.keys(), ...others.keys()])].filter(
    (field) => !but.includes(field) && !same(ours.get(field), others.get(field)),
  );
}
