import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../boards/document/connector';
import { gridIndex } from '../../../boards/document/numbering';
import { makeConnector } from '../../../boards/library/make-connector';
import type { SignalId } from '../../../boards/signals/signals';
import { boardWith, pinsOn, printed, seenOnPaper, wordsOn } from '../handover/papers';

/** How a row of a published table came to us, with the figure the library has to give for it. */
export const SOURCE = 0.95;
export const SECONDARY = 0.8;
export const MEMORY = 0.6;

/** Pin, what the paper prints there, what that means, how it was read; the port, where there are several. */
type Row = readonly [pin: string, prints: string, means: SignalId | 'KEY', read: number, port?: string];

/** One connector as papers describe it. The rows are written from those papers, not from the library. */
export interface Published {
  readonly papers: string;
  readonly pitchMm: number;
  readonly pitchFrom: string;
  /** The pins as they lie seen from above the component side, the key included. */
  readonly seen: readonly string[];
  readonly rows: readonly Row[];
}

export function anywhere(typeId: string): Connector {
  return makeConnector(typeId, { id: 'under-test', print: 'TEST', place: { xMm: 0, yMm: 0, turn: 0 } });
}

/** States that a connector of the library is what the papers say, pin by pin. */
export function follows(typeId: string, published: Published): void {
  describe(`${typeId}, by ${published.papers}`, () => {
    const connector = anywhere(typeId);

    it(`stands at ${published.pitchMm} mm (${published.pitchFrom})`, () => {
      expect(connector.grid.pitchMm).toBe(published.pitchMm);
      expect(connector.grid.rowPitchMm).toBeUndefined();
    });

    it('is counted as the papers draw it', () => {
      expect(seenFromAbove(connector)).toEqual(published.seen);
    });

    it('carries on every pin what the papers say, and prints their names', () => {
      expect(connector.pins.map(rowOf)).toEqual(published.rows);
    });

    it('is printed as the papers draw it, with their name at every pin', () => {
      const paper = printed(boardWith([connector]));
      const [page, ...more] = paper.pages.filter((each) => pinsOn(each).size > 0);
      expect(more).toEqual([]);
      const drawn = page ? seenOnPaper(pinsOn(page)) : [];
      expect(drawn).toEqual(published.seen.map((row) => row.replaceAll(/ ?\./g, '').trim()));
      const words = wordsOn(paper);
      for (const [pin, prints] of published.rows) {
        expect(words.filter((word) => word === pin).length).toBeGreaterThanOrEqual(2);
        expect(words.join('').replaceAll(/\s/g, '')).toContain(prints.replaceAll(/\s/g, ''));
      }
    });
  });
}

function rowOf(pin: Connector['pins'][number]): readonly unknown[] {
  const row = [pin.pin, pin.name, pin.missing ? 'KEY' : pin.signal, pin.confidence];
  return pin.channel === undefined ? row : [...row, pin.channel];
}

function seenFromAbove({ grid }: Connector): readonly string[] {
  const { labelAt } = gridIndex(grid);
  return Array.from({ length: grid.rows }, (_, row) =>
    Array.from({ length: grid.cols }, (__, col) => labelAt([row, col]) ?? '.').join(' '),
  );
}
