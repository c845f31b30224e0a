import type { Document } from './document';
import { FORMATS } from './formats';
import { prettyJson } from './pretty-json';

/**
 * The text of a document as it is saved. It goes through its own schema first: nothing is written that
 * the schema would refuse, and names always stand in the schema's order, so equal documents are equal
 * bytes. Throws on a document that does not pass, which is a bug of whoever made it.
 */
export function serialize(document: Document): string {
  const format = FORMATS.find(({ format }) => format === document.format);
  if (format === undefined) throw new Error(`No format ${document.format}`);
  return `${prettyJson(format.schema.parse(document))}\n`;
}
