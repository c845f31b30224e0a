/** Marks a place the compiler has proved unreachable; reaching it is a bug, and says so. */
export function never(value: never): never {
  throw new Error(`Not handled: ${JSON.stringify(value)}`);
}
