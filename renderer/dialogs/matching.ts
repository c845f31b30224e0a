import { count } from '../../boards/document/problem/shown-value';

/** How many matches a list shows; the rest is one more word away. */
export const SHOWN = 60;

/** Whether every word of what was typed stands somewhere in the text, in any order and case. */
export function matches(text: string, typed: string): boolean {
  const low = text.toLowerCase();
  return typed
    .toLowerCase()
    .split(/\s+/)
    .every((word) => low.includes(word));
}

/** "Showing 60 of 1,340; type to narrow." when there are more than are shown. */
export function cutWords(found: number): string {
  return found <= SHOWN ? '' : `Showing ${SHOWN} of ${count(found)}. Type more to narrow the list.`;
}
