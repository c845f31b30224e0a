import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { delimiter, join } from 'node:path';
import { openKit, type PaperKit } from '../../../electron/paper/kit';
import kitFiles from '../../../electron/paper/kit-files.json';
import { inRoot } from '../../../electron/start/place.mjs';
import { scratchFolder } from '../scratch';

/** A file of the kit from where the packages lie; the build copies it from there. */
export function kitFile(name: string): Promise<Uint8Array> {
  const files: Readonly<Record<string, string>> = kitFiles;
  return readFile(inRoot('node_modules', files[name] ?? name));
}

export function kitFromPackages(): Promise<PaperKit> {
  return openKit(kitFile);
}

/** Whether the reader of PDF that we check ourselves by is on this machine (poppler, Debian poppler-utils). */
export const HAS_POPPLER = (process.env.PATH ?? '')
  .split(delimiter)
  .some((folder) => existsSync(join(folder, 'pdftotext')));

/** What one of poppler's programs prints about a PDF. */
export async function readByPoppler(
  program: string,
  pdf: Uint8Array,
  args: readonly string[] = [],
): Promise<string> {
  const path = join(scratchFolder(), 'paper.pdf');
  await writeFile(path, pdf);
  const order = program === 'pdftotext' ? [...args, path, '-'] : [...args, path];
  return execFileSync(program, order, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}

/** One page in colour, three bytes a pixel, 96 pixels to the inch. */
export async function pixelsOf(pdf: Uint8Array, page: number) {
  const folder = scratchFolder();
  const path = join(folder, 'paper.pdf');
  await writeFile(path, pdf);
  const at = ['-r', '96', '-f', String(page), '-l', String(page), '-singlefile'];
  execFileSync('pdftoppm', [...at, path, join(folder, 'page')]);
  const ppm = await readFile(join(folder, 'page.ppm'));
  const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(ppm.subarray(0, 64).toString('latin1'));
  if (!head) throw new Error('No pixmap');
  return { width: Number(head[1]), height: Number(head[2]), rgb: ppm.subarray(head[0].length) };
}
