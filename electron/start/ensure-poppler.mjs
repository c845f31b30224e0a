import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { installFromDebian } from './debian.mjs';

/** The reader of PDF by which the tests check what is printed; without it they say so and check less. */
export function ensurePoppler() {
  const folders = (process.env.PATH ?? '').split(delimiter);
  if (folders.some((folder) => existsSync(join(folder, 'pdftotext')))) return;
  installFromDebian('poppler-utils', 'to read printed pages by');
}
