import { z } from 'zod';
import type { DocumentKind } from './document';
import { FORMATS } from './formats';

/** The published JSON Schema (draft 2020-12) of a kind of file, made from the schema that reads it. */
export function jsonSchemaOf(kind: DocumentKind): Readonly<Record<string, unknown>> {
  const format = FORMATS.find((each) => each.kind === kind);
  if (format === undefined) throw new Error(`No kind ${kind}`);
  const { $schema, ...schema } = z.toJSONSchema(format.schema, { target: 'draft-2020-12', io: 'input' });
  const version = format.schema.shape.version.value;
  return {
    $schema,
    $id: `urn:leadwright:schema:${kind}:${version}`,
    title: `Leadwright ${TITLES[kind]}, version ${version}`,
    ...schema,
  };
}

const TITLES: Readonly<Record<DocumentKind, string>> = {
  build: 'build',
  board: 'board sheet',
  case: 'case sheet',
};
