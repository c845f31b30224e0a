import { describe, expect, test } from 'vitest';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import { type Choices, takeOf } from '../../../boards/edit/compare/choices';
import { compareBoards } from '../../../boards/edit/compare/compare-boards';
import { compareCases } from '../../../boards/edit/compare/compare-cases';
import { boardRows, type ComparedRow, caseRows } from '../../../renderer/dialogs/compare/compared-rows';
import { mergeCommand, previewOf, sheetPreview } from '../../../renderer/dialogs/compare/merging';
import { saidAfter } from '../../../renderer/dialogs/compare/said-after';
import { bench, wiredBuild } from '../stand-in';

const NBSP = '\u00a0';

/** The demo's board with one pin of the panel told otherwise and the speaker header left out. */
function toldAnew(): BoardSheet {
  const { board } = wiredBuild();
  const connectors = board.connectors
    .filter(({ print }) => print !== 'SPKR')
    .map((connector) =>
      connector.print === 'PANEL'
        ? {
            ...connector,
            pins: connector.pins.map((pin) =>
              pin.pin === '1'
                ? { ...pin, signal: 'ground' as const, source: { kind: 'measured' as const } }
                : pin,
            ),
          }
        : connector,
    );
  return { ...board, id: 'anew', name: 'Anew', connectors };
}

const rows = () => boardRows(compareBoards(wiredBuild().board, toldAnew()));
const differing = () => rows().filter(({ differs }) => differs);
const rowOf = (title: string): ComparedRow => {
  const found = differing().find((row) => row.title === title);
  if (found === undefined) throw new Error(`No row ${title}`);
  return found;
};

describe('two boards side by side', () => {
  test('show only what differs, under the connector that it is of', () => {
    expect(differing().map(({ title }) => title)).toEqual(['name', 'PANEL', `pin${NBSP}1`, 'SPKR']);
    expect(rows().length).toBeGreaterThan(100);
  });

  test('say of each pin what it is and where that was read', () => {
    const { mine, theirs } = rowOf(`pin${NBSP}1`);
    expect(mine.main).toMatch(/^drive LED \+/);
    expect(theirs).toMatchObject({
      main: expect.stringMatching(/^ground/),
      small: expect.stringMatching(/^measured/),
    });
  });

  test('have a key for each row, and every key once', () => {
    const keys = rows().map(({ key }) => key);
    expect(keys).toEqual([...new Set(keys)]);
  });

  test('say of a connector that one has not, what becomes of it', () => {
    const row = rowOf('SPKR');
    expect(row.theirs.main).toBe('not in this sheet');
    const after = wiredBuild().board;
    expect(saidAfter(row, after, () => 'both').main).toBe('stays');
    expect(saidAfter(row, after, () => 'theirs').main).toBe('taken out');
  });
});

test('what would stand there is said of each particular as it is taken', () => {
  const row = rowOf('name');
  const after = (take: 'mine' | 'both' | 'theirs') => saidAfter(row, wiredBuild().board, () => take);
  expect(after('mine').main).toBe('Tern B2');
  expect(after('both')).toEqual({ main: 'Tern B2', small: 'theirs in the notes' });
  expect(after('theirs').main).toBe('Anew');
});

describe('the preview', () => {
  const choose = (others: Choices['others'], ...chosen: Choices['rows']): Choices => ({
    others,
    rows: chosen,
  });
  const previewed = (choices: Choices) => previewOf(wiredBuild(), mergeCommand(toldAnew(), choices));

  test('is what is done then', () => {
    const b = bench();
    const command = mergeCommand(toldAnew(), choose('both'));
    const preview = previewOf(b.build(), command);
    b.run(command);
    expect(preview).toEqual({ ok: true, sheet: b.build().board, plugsOff: 0, changes: true });
    expect(saidAfter(rowOf(`pin${NBSP}1`), b.build().board, takeOf(choose('both'))).small).toMatch(
      /also measured: ground/,
    );
  });

  test('says how many plugs would come off', () => {
    expect(previewed(choose('theirs'))).toMatchObject({ ok: true, plugsOff: 1 });
    const spared = choose('theirs', { key: rowOf('SPKR').takeKey ?? '', take: 'mine' });
    expect(previewed(spared)).toMatchObject({ ok: true, plugsOff: 0 });
  });

  test('of two sheets of the library is what a build would make of them', () => {
    const mine = wiredBuild().board;
    const asSheet = sheetPreview(mine, toldAnew(), choose('both'));
    const inBuild = previewed(choose('both'));
    expect(asSheet.ok && asSheet.sheet).toEqual(inBuild.ok && inBuild.sheet);
    expect(sheetPreview(mine, toldAnew(), choose('mine'))).toMatchObject({ ok: true, changes: false });
  });

  test('says that nothing would change', () => {
    expect(previewed(choose('mine'))).toMatchObject({ ok: true, changes: false });
  });
});

test('two cases side by side show each lead, and under it what differs', () => {
  const mine = wiredBuild().case;
  const [first, ...others] = mine.leads;
  if (first === undefined) throw new Error('The case has leads');
  const theirs = { ...mine, leads: [{ ...first, notes: 'Too short.' }, ...others.slice(1)] };
  const found = caseRows(compareCases(mine, theirs)).filter(({ differs }) => differs);
  expect(found.map(({ title, mine: said, theirs: other }) => [title, said.main, other.main])).toEqual([
    [first.name, expect.any(String), expect.any(String)],
    ['notes', 'nothing said', 'Too short.'],
    [others[0]?.name, expect.any(String), 'not in this sheet'],
  ]);
});
