import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BoardSheet } from '../../../../boards/document/board-sheet';
import type { Connector, Pin } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { parseDocument } from '../../../../boards/document/parse';
import { serialize } from '../../../../boards/document/serialize';
import { compareBoards, countDifferences } from '../../../../boards/edit/compare/compare-boards';
import { keepBoth } from '../../../../boards/edit/compare/keep-both';
import { mergeBoards } from '../../../../boards/edit/compare/merge-boards';
import type { Take } from '../../../../boards/edit/compare/taking';
import { arbitraryName, arbitrarySeed, pinFor } from '../../arbitrary-build';
import { Dice } from '../../dice';
import { bench, grid, posts } from '../../fixtures/bench';
import { arbitraryPair } from './arbitrary-pair';

function merged(mine: BoardSheet, theirs: BoardSheet, take: Take): BoardSheet {
  const result = mergeBoards(compareBoards(mine, theirs), () => take);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

const eachPair = (seed: number, holds: (mine: BoardSheet, theirs: BoardSheet) => void) =>
  fc.assert(
    fc.property(arbitraryPair, ([mine, theirs]) => {
      holds(mine, theirs);
    }),
    { seed, numRuns: 500 },
  );

/** A sheet but for what tells it from other sheets: its id, the ids and the order of connectors. */
function statements({ id: _, connectors, photos = [], ...rest }: BoardSheet): unknown {
  const plain = new Map(
    connectors.map(({ id, pins, ...connector }) => [
      id,
      text({
        ...connector,
        pins: pins
          .filter((pin) => Object.keys(pin).length > 1)
          .map(text)
          .sort(),
      }),
    ]),
  );
  const pointing = photos.map(({ points, ...photo }) => ({
    ...photo,
    points: points.map((point) => text({ ...point, connector: plain.get(point.connector) })).sort(),
  }));
  return { ...rest, connectors: [...plain.values()].sort(), photos: pointing };
}

/** The same text for the same data, in whatever order its names stand. */
function text(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}

describe('taking over from another sheet', () => {
  it('with mine of every row leaves the sheet as it is', () => {
    eachPair(72, (mine, theirs) => expect(merged(mine, theirs, 'mine')).toEqual(mine));
  });

  it('with theirs of every row gives the other sheet', () => {
    eachPair(73, (mine, theirs) =>
      expect(statements(merged(mine, theirs, 'theirs'))).toEqual(statements(theirs)),
    );
  });

  it('gives a sheet that is sound and can be saved and opened', () => {
    eachPair(74, (mine, theirs) => {
      const opened = parseDocument(serialize(merged(mine, theirs, 'both')));
      expect(opened.ok ? [] : opened.problem).toEqual([]);
    });
  });

  it('with both of every row keeps what each of the two says', () => {
    eachPair(75, (mine, theirs) => {
      const both = merged(mine, theirs, 'both');
      for (const said of [mine, theirs]) expectAllKept(said, both, mine, theirs);
    });
  });

  it('with both of a pin changes nothing a second time', () => {
    fc.assert(
      fc.property(arbitrarySeed, arbitraryName, (seed, name) => {
        const dice = new Dice(seed);
        const [mine, theirs] = [pinFor('1', dice, name), pinFor('1', dice, `${name} 2`)];
        const once = keepBoth(mine, theirs, 'Other');
        expect(keepBoth(once, theirs, 'Other')).toEqual(once);
      }),
      { seed: 76, numRuns: 2_000 },
    );
  });

  it('of both, mine stands and theirs is kept beside it with its source', () => {
    const pin = (signal: Pin['signal'], kind: 'manual' | 'guessed'): Pin =>
      ({ pin: '1', signal, source: { kind } }) as Pin;
    const of = (one: Pin) => bench([{ ...posts('panel', grid(1, 2)), pins: [one] }], []).board;
    const both = (mine: Pin, theirs: Pin) => merged(of(mine), of(theirs), 'both').connectors[0]?.pins[0];
    expect(both(pin('power-led-feed', 'manual'), pin('ground', 'manual'))).toMatchObject({
      signal: 'power-led-feed',
      alternatives: [{ signal: 'ground', source: { kind: 'manual' } }],
    });
    // A guess gives way to what was read, and is kept all the same.
    expect(both(pin('power-led-feed', 'guessed'), pin('ground', 'manual'))).toMatchObject({
      signal: 'ground',
      source: { kind: 'manual' },
      alternatives: [{ signal: 'power-led-feed', source: { kind: 'guessed' } }],
    });
  });

  it('of connectors of another size, both stand on the board', () => {
    const mine = posts('panel', grid(2, 5));
    const board = bench([mine], []).board;
    const other = bench(
      [{ ...posts('panel', grid(2, 4)), pins: [{ pin: '1', signal: 'ground' }] }],
      [],
    ).board;
    expect(merged(board, other, 'both').connectors.map(({ id }) => id)).toEqual(['panel', 'panel-2']);
  });

  it('refuses what a pin has no room for', () => {
    const alternatives = Array.from({ length: LIMITS.alternativesPerPin }, (_, at) => ({
      signal: 'ground' as const,
      source: { kind: 'manual' as const, where: `page ${at}` },
    }));
    const of = (one: Pin) => bench([{ ...posts('panel', grid(1, 2)), pins: [one] }], []).board;
    const mine = of({ pin: '1', signal: 'reset-switch-input', source: { kind: 'print' }, alternatives });
    const theirs = of({ pin: '1', signal: 'power-switch-input', source: { kind: 'manual' } });
    expect(mergeBoards(compareBoards(mine, theirs), () => 'both')).toEqual({
      ok: false,
      problem: { code: 'full', what: 'statements', limit: LIMITS.alternativesPerPin },
    });
    expect(countDifferences(compareBoards(mine, theirs))).toBe(1);
  });
});

/** Every statement of one of the two sheets is found in the merged one: as it is, beside another, or in notes. */
function expectAllKept(said: BoardSheet, both: BoardSheet, mine: BoardSheet, theirs: BoardSheet): void {
  const added = [...both.connectors];
  for (const row of compareBoards(mine, theirs).connectors) {
    const original = said === mine ? row.mine : row.theirs;
    if (original === null) continue;
    const kept =
      row.mine === null || (!row.pinByPin && said === theirs && row.theirs)
        ? added.find(
            ({ id, print, title }) =>
              !mine.connectors.some((own) => own.id === id) &&
              print === original.print &&
              title === original.title,
          )
        : both.connectors.find(({ id }) => id === row.mine?.id);
    if (kept === undefined) throw new Error(`${original.id} is lost`);
    for (const [field, value] of Object.entries(original)) {
      if (['id', 'pins', 'grid', 'notes', 'readings'].includes(field)) continue;
      const words = kept.notes ?? '';
      if (JSON.stringify(Reflect.get(kept, field)) !== JSON.stringify(value))
        expect(words).toContain('From “');
    }
    const measured = `${text(kept.readings ?? [])} ${kept.notes ?? ''}`;
    for (const { kind } of original.readings ?? []) expect(measured).toContain(kind);
    for (const line of (original.notes ?? '').split('\n')) expect(kept.notes ?? '').toContain(line);
    const pairs =
      row.mine === null || row.theirs === null || !row.pinByPin
        ? original.pins.map((pin) => ({ pin, at: pin.pin }))
        : row.pins.flatMap((each) => {
            const pin = said === mine ? each.mine : each.theirs;
            return pin === null ? [] : [{ pin, at: each.mine?.pin }];
          });
    for (const { pin, at } of pairs) expectPinKept(pin, kept, at);
  }
}

function expectPinKept(pin: Pin, kept: Connector, at: string | undefined): void {
  const { pin: label, alternatives = [], notes, belongsTo, wakeSupply, values = [], signal, ...rest } = pin;
  const read = signal === 'unknown' ? rest : { ...rest, ...(signal && { signal }) };
  if (Object.keys(pin).length === 1) return;
  const found = kept.pins.find((each) => each.pin === at);
  if (found === undefined) {
    // Its position is not there in the numbering that stands: told in the connector's notes.
    if (Object.keys(read).length > 0) expect(kept.notes ?? '').toContain(`pin ${label}`);
    return;
  }
  const told = [found, ...(found.alternatives ?? [])];
  const asAlternative = { ...read, ...(read.missing && { signal: 'no-connection' as const }) };
  const holds = (one: object) =>
    [read, asAlternative].some((statement) =>
      Object.entries(statement).every(
        ([field, value]) => JSON.stringify(Reflect.get(one, field)) === JSON.stringify(value),
      ),
    );
  expect(
    told.filter(holds),
    `${JSON.stringify(read)} of pin ${label} in ${JSON.stringify(found)}`,
  ).not.toEqual([]);
  for (const alternative of alternatives) expect(found.alternatives).toContainEqual(alternative);
  if (notes !== undefined) expect(found.notes).toContain(notes);
  for (const fact of [belongsTo, wakeSupply]) {
    if (fact !== undefined) expect(`${found.belongsTo} ${found.wakeSupply} ${found.notes}`).toContain(fact);
  }
  for (const value of values)
    expect(`${JSON.stringify(found.values)} ${found.notes}`).toContain(value.parameter);
}
