import type { Document } from '../../boards/document/document';
import { LIMITS } from '../../boards/document/limits';

/** "Study machine 3" as an id: "study-machine-3"; the fallback where nothing of the name is left. */
export function idFrom(name: string, fallback: string): string {
  const id = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LIMITS.idLength)
    .replace(/^-+|-+$/g, '');
  return id === '' ? fallback : id;
}

/** An id that none of those taken has: the name's own, or with a number behind it. */
export function freshId(name: string, fallback: string, taken: ReadonlySet<string>): string {
  const id = idFrom(name, fallback);
  if (!taken.has(id)) return id;
  const stem = id.slice(0, LIMITS.idLength - 6).replace(/-+$/, '');
  let number = 2;
  while (taken.has(`${stem}-${number}`)) number++;
  return `${stem}-${number}`;
}

/** "study-machine-3.build.json": what a document would be called as a file. */
export function suggestedName(document: Document): string {
  const kind = document.format.slice('leadwright/'.length);
  return `${idFrom(document.name, kind)}.${kind}.json`;
}
