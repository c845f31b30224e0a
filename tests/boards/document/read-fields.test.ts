import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FORMATS } from '../../../boards/document/formats';
import { LIMITS } from '../../../boards/document/limits';
import { readFields } from '../../../boards/document/problem/read-fields';
import { arbitraryBoard, arbitraryBuild, arbitraryCase } from '../arbitrary-build';
import { soundBuild } from './refused';

const anyDocument = fc.oneof(arbitraryBuild, arbitraryBoard, arbitraryCase);

/** Every object with its names the other way round, as no program of ours writes them. */
function backwards(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(backwards);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, item]) => [key, backwards(item)]),
  );
}

function schemaOf(document: { readonly format: string }) {
  const format = FORMATS.find((one) => one.format === document.format);
  if (format === undefined) throw new Error(document.format);
  return format.schema;
}

describe('a value that is read by its schema', () => {
  // Reference: zod's own parse of the whole value.
  it('is what zod makes of it, to the order of the names', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        const schema = schemaOf(document);
        const raw = backwards(JSON.parse(JSON.stringify(document)));
        const read = readFields(schema, raw);
        const expected = schema.parse(raw);
        expect(read).toStrictEqual({ ok: true, value: expected });
        expect(JSON.stringify(read.ok && read.value)).toBe(JSON.stringify(expected));
      }),
      { seed: 1802, numRuns: 300 },
    );
  });

  it('is never what was given, so that who gave it cannot change it', () => {
    const raw = JSON.parse(JSON.stringify(soundBuild()));
    const read = readFields(schemaOf(raw), raw);
    raw.board.connectors[0].title = 'changed';
    raw.board.connectors.length = 1;
    expect(read).toStrictEqual({ ok: true, value: soundBuild() });
  });

  it('is refused where zod refuses it, and only there', () => {
    fc.assert(
      fc.property(
        anyDocument,
        fc.nat(),
        fc.constantFrom(undefined, null, -1, '', [], {}),
        (document, at, wrong) => {
          const raw = JSON.parse(JSON.stringify(document));
          const places: [Record<string, unknown>, string][] = [];
          const walk = (value: unknown) => {
            if (typeof value !== 'object' || value === null) return;
            for (const key of Object.keys(value)) {
              places.push([value as Record<string, unknown>, key]);
              walk((value as Record<string, unknown>)[key]);
            }
          };
          walk(raw);
          const [holder, key] = places[at % places.length] ?? [raw, 'format'];
          holder[key] = wrong;
          const schema = schemaOf(document);
          expect(readFields(schema, raw).ok).toBe(schema.safeParse(raw).success);
        },
      ),
      { seed: 1803, numRuns: 1_000 },
    );
  });

  it('is not read on after so many mistakes, however many there are', () => {
    const raw = JSON.parse(JSON.stringify(soundBuild()));
    raw.board.connectors = Array.from({ length: LIMITS.connectors }, () => 0);
    const read = readFields(schemaOf(raw), raw);
    expect(read).toMatchObject({
      ok: false,
      problem: { more: LIMITS.problemsCounted - LIMITS.problemsShown },
    });
  });
});
