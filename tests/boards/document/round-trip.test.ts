import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDocument } from '../../../boards/document/parse';
import { serialize } from '../../../boards/document/serialize';
import { arbitraryBoard, arbitraryBuild, arbitraryCase } from '../arbitrary-build';

const anyDocument = fc.oneof(arbitraryBuild, arbitraryBoard, arbitraryCase);

describe('a document that is saved and opened', () => {
  it('is the same document, and the same bytes when saved again', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        const text = serialize(document);
        const opened = parseDocument(text);
        expect(opened).toStrictEqual({ ok: true, value: document });
        if (opened.ok) expect(serialize(opened.value)).toBe(text);
      }),
      { seed: 1801, numRuns: 500 },
    );
  });
});
