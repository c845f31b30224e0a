import { ok, type Result } from '../base/result';
import type { Document } from './document';
import { FORMATS } from './formats';
import { readDocument } from './parse';
import { prettyJson } from './pretty-json';
import type { OpenProblem } from './problem/problem';

/**
 * The text of a document as it is saved. It goes through its own schema first: nothing is written that
 * the schema would refuse, and names always stand in the schema's order, so equal documents are equal
 * bytes. Throws on a document that does not pass, which is a bug of whoever made it.
 */
export function serialize(document: Document): string {
  const format = FORMATS.find(({ format }) => format === document.format);
  if (format === undefined) throw new Error(`No format ${document.format}`);
  return laidOut(format.schema.parse(document) as Document);
}

/**
 * As above, from the JSON of a document in any layout and order. It is read as a file is, once and for all: what
 * could not be opened again is refused here, with the words that opening it would give.
 */
export function serializeJson(json: string): Result<string, OpenProblem> {
  const read = readDocument(json);
  return read.ok ? ok(laidOut(read.value)) : read;
}

function laidOut(document: Document): string {
  return `${prettyJson(document)}\n`;
}
