import { serialize } from '../../../boards/document/serialize';
import wiredText from '../../../boards/library/demo/wired.build.json?raw';

/** A board sheet with nothing on it but some text, so that it is longer than what a disk writes at once. */
export function sheetText(name: string, noteLength = 4_000): string {
  const outline = { widthMm: 200, depthMm: 170 };
  const notes = `${name} `.repeat(noteLength).slice(0, noteLength).trim();
  return serialize({
    format: 'leadwright/board',
    version: 1,
    id: 'bare',
    name,
    outline,
    connectors: [],
    notes,
  });
}

export const FORMER = sheetText('Former');
export const NEXT = sheetText('The next one');

/** A whole build, for what is made from one. */
export const BUILD = wiredText;
