import { existsSync, readFileSync } from 'node:fs';
import type { Said } from './operation';

/**
 * What does not hold of a file that was to be replaced: it is the former one whole, or the next one whole, and
 * it is what was said.
 *
 * @param former null where there was none
 */
export function fileWrongs(path: string, former: string | null, next: string, said: Said | null) {
  const now = existsSync(path) ? readFileSync(path, 'utf8') : null;
  if (now !== former && now !== next) return [`${path} is neither the former nor the next: ${shown(now)}`];
  if (said === null) return [];
  if (said.done) return now === next ? [] : ['It was said to be saved, and the former file is there'];
  const wrongs = now === former ? [] : ['It was said not to be saved, and the next file is there'];
  return [...wrongs, ...wordsWrongs(path, said)];
}

/** A refusal has to name the file and a cause. */
export function wordsWrongs(path: string, said: Said): readonly string[] {
  if (said.done) return [];
  const named = said.name !== '' && path.endsWith(said.name);
  return named && said.code !== '' ? [] : [`The refusal ${said.code} names “${said.name}”, not ${path}`];
}

function shown(text: string | null): string {
  if (text === null) return 'there is none';
  return `${text.length} characters, “${text.slice(0, 40)}”`;
}
