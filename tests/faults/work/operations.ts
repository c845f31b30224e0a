import { KEEPING, RECOVERING } from './keeping';
import { LIBRARY } from './library';
import type { Operation } from './operation';
import { SAVING } from './saving';

/** Everything a person does that writes files. */
export const OPERATIONS: readonly Operation[] = [...SAVING, ...KEEPING, ...RECOVERING, ...LIBRARY];

export function operationOf(name: string): Operation {
  const found = OPERATIONS.find((operation) => operation.name === name);
  if (!found) throw new Error(`There is no operation “${name}”`);
  return found;
}
