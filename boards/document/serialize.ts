import { ok, type Result } from '../base/result';
import type { Document } from './document';
import { FORMATS } from './formats';
import { documentFrom } from './parse';
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
  return laidOut(format.schema.parse(document));
}

/**
 * As above, of data from outside. It is read as a file is: what could not be opened again is refused here, with the
 * words that opening it would give.
 */
export function serializeData(data: unknown): Result<string, OpenProblem> {
  const read = documentFrom(data);
  return read.ok ? ok(laidOut(read.value)) : read;
}

function laidOut(document: unknown): string {
  return `${prettyJson(document)}\n`;
}
