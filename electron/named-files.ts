import { resolve } from 'node:path';

/** The documents named on a command line, seen from the folder in which it was given. */
export function namedFiles(args: readonly string[], folder: string): readonly string[] {
  return args
    .filter((arg) => !arg.startsWith('-') && arg.toLowerCase().endsWith('.json'))
    .map((arg) => resolve(folder, arg));
}
