import { join } from 'node:path';
import { parseDocument } from '../../../boards/document/parse';
import { sheetText } from './documents';
import { type Place, startAt } from './place';

export const robotFile = ({ home }: Place) => join(home, 'work.board.json');

/** Saves without a pause, each time another text, and tells the number of every save that was confirmed. */
export async function saveWithoutPause(place: Place): Promise<never> {
  const { host, calls } = startAt(place);
  const handle = host.handles.give(robotFile(place));
  for (let number = 1; ; number++) {
    const saved = await calls.save({
      handle,
      document: JSON.parse(sheetText(`Save ${number}`)),
      expected: null,
    });
    if (saved.ok) process.stdout.write(`${number}\n`);
  }
}

/** The number of the save that a text is of; null where it is not whole. */
export function numberIn(text: string): number | null {
  const parsed = parseDocument(text);
  return parsed.ok ? Number(parsed.value.name.replace('Save ', '')) : null;
}
