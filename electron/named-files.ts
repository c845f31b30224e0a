import { resolve } from 'node:path';
import { isDocumentName } from './host/new-name';

/** The documents named on a command line, seen from the folder in which it was given. */
export function namedFiles(args: readonly string[], folder: string): readonly string[] {
  return args.filter((arg) => !arg.startsWith('-') && isDocumentName(arg)).map((arg) => resolve(folder, arg));
}
