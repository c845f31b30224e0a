import Ajv from 'ajv/dist/2020';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { FORMATS } from '../../../boards/document/formats';
import { jsonSchemaOf } from '../../../boards/document/json-schema';
import { arbitraryBoard, arbitraryBuild, arbitraryCase } from '../arbitrary-build';
import { spoilt } from './refused';

/** Reads the published schema as another program would: from its text alone. */
function published(kind: 'build' | 'board' | 'case') {
  const text = JSON.stringify(jsonSchemaOf(kind));
  return z.fromJSONSchema(JSON.parse(text));
}

/** Places of a sound build, each with a value that cannot stand there. */
const SPOILT: readonly (readonly [string, unknown])[] = [
  ['case.leads.0.wires.0.colour', 'gray'],
  ['board.connectors.0.grid.rows', 65],
  ['board.connectors.0.grid.rows', 1.5],
  ['board.connectors.0.grid.numbering.scheme', 'round'],
  ['board.connectors.0.pins.0.signal', 'power'],
  ['board.outline.depthMm', 0],
  ['board.outline.formFactor', 'large'],
  ['board.outline.holes', [{ id: 'a', xMm: 10 }]],
  ['case.leads.0.id', 'Power Switch'],
  ['seats.0.at', [0]],
  ['view.turn', 45],
  ['view.zoom', 2],
  ['name', undefined],
];

describe('the published schemas', () => {
  it.each(FORMATS)('$kind: name their draft, themselves and their title', ({ kind, format }) => {
    expect(jsonSchemaOf(kind)).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      $id: `urn:leadwright:schema:${kind}:1`,
      title: `Leadwright ${kind === 'build' ? 'build' : `${kind} sheet`}, version 1`,
      type: 'object',
      additionalProperties: false,
      properties: { format: { const: format }, version: { const: 1 } },
    });
  });

  it('let in whatever the program lets in', () => {
    const [build, board, sheet] = [published('build'), published('board'), published('case')];
    const every = fc.tuple(arbitraryBuild, arbitraryBoard, arbitraryCase);
    fc.assert(
      fc.property(every, ([aBuild, aBoard, aCase]) => {
        expect(build.safeParse(aBuild).error).toBeUndefined();
        expect(board.safeParse(aBoard).error).toBeUndefined();
        expect(sheet.safeParse(aCase).error).toBeUndefined();
      }),
      { seed: 2020, numRuns: 50 },
    );
  });

  it.each(SPOILT)('refuse what the program refuses: %s = %j', (path, value) => {
    expect(published('build').safeParse(spoilt(path, value)).success).toBe(false);
  });
});

/**
 * The same question put to a validator of JSON Schema that knows nothing of this program: ajv 8, for the
 * draft of 2020-12. It is there as a part of the packager.
 */
describe('an independent validator', () => {
  const ajv = new Ajv({ strict: false });
  const [build, board, sheet] = (['build', 'board', 'case'] as const).map((kind) =>
    ajv.compile(JSON.parse(JSON.stringify(jsonSchemaOf(kind)))),
  );

  it('takes the published schemas for sound ones', () => {
    for (const { kind } of FORMATS) expect(ajv.validateSchema(jsonSchemaOf(kind))).toBe(true);
  });

  it('lets in what the program lets in, with or without the address of the schema', () => {
    fc.assert(
      fc.property(arbitraryBuild, arbitraryBoard, arbitraryCase, (aBuild, aBoard, aCase) => {
        build?.(aBuild);
        expect(build?.errors).toBeNull();
        board?.({ $schema: '../schemas/board.schema.json', ...aBoard });
        expect(board?.errors).toBeNull();
        sheet?.(aCase);
        expect(sheet?.errors).toBeNull();
      }),
      { seed: 2021, numRuns: 50 },
    );
  });

  it.each(SPOILT)('refuses what the program refuses: %s = %j', (path, value) => {
    expect(build?.(spoilt(path, value))).toBe(false);
  });
});
