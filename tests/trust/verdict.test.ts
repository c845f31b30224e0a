import { expect, test } from 'vitest';
import { ALL_ROWS } from './all-rows';
import {
  afterRun,
  besidePromises,
  outcomeOf,
  ROW_IDS,
  type RowResult,
  stands,
  tableForDocs,
  withTable,
} from './verdict.mjs';

const row = (more: Partial<RowResult>): RowResult => ({
  id: 'R1',
  promise: 'Nothing is lost',
  target: { count: 500, what: 'faults' },
  long: false,
  tried: 500,
  failures: [],
  ...more,
});

test.each<[string, RowResult | undefined, string, boolean]>([
  ['as many as the target, none failed', row({}), 'held', true],
  ['one fewer than the target', row({ tried: 499 }), 'below target', false],
  ['one that failed', row({ failures: ['the file was cut off'] }), 'failed', false],
  ['failed, and a reason not to run the rest', row({ failures: ['x'], notRun: 'no gcc' }), 'failed', false],
  ['nothing tried, for a reason', row({ tried: 0, notRun: 'there is no gcc' }), 'not run', true],
  ['nothing tried, for none', row({ tried: 0 }), 'below target', false],
  ['of a promise that the row no longer makes', row({ outdated: true }), 'of another promise', false],
  ['no such row', undefined, 'never run', false],
])('%s', (_, result, outcome, good) => {
  expect(outcomeOf(result)).toBe(outcome);
  expect(stands(outcomeOf(result))).toBe(good);
});

test('Each row has an id of the table, once', () => {
  const ids = ALL_ROWS.map(({ id }) => id);
  expect(ids).not.toEqual([]);
  expect([...new Set(ids)]).toEqual(ids);
  expect(ids.filter((id) => !ROW_IDS.includes(id))).toEqual([]);
});

test('A row that was asked for and left nothing broke off, and any other stays as it was', () => {
  const before = new Map(
    [row({}), row({ id: 'R2' }), row({ id: 'R4', long: true })].map((it) => [it.id, it]),
  );
  const ran = new Map([['R2', row({ id: 'R2', tried: 600 })]]);
  const outcomes = (ids: readonly string[], soak: boolean) => {
    const after = afterRun(before, ran, { ids, soak }, { on: '2026-01-02', commit: 'abc1234' });
    return [...after.values()].map((it) => [it.id, outcomeOf(it), it.tried, it.on]);
  };
  const second = ['R2', 'held', 600, '2026-01-02'];
  expect(outcomes([], false)).toEqual([
    ['R1', 'failed', 0, '2026-01-02'],
    second,
    ['R4', 'held', 500, undefined],
  ]);
  expect(outcomes([], true)).toEqual([
    ['R1', 'held', 500, undefined],
    second,
    ['R4', 'failed', 0, '2026-01-02'],
  ]);
  expect(outcomes(['R2'], false)).toEqual([
    ['R1', 'held', 500, undefined],
    second,
    ['R4', 'held', 500, undefined],
  ]);
  expect(outcomes(['R4'], false)).toContainEqual(['R4', 'failed', 0, '2026-01-02']);
});

test('What came of a row is of another promise once the row says or asks for something else', () => {
  const { promise, target } = row({});
  const outcomeBeside = (now: Record<string, Pick<RowResult, 'promise' | 'target'>>) =>
    [...besidePromises(new Map([['R1', row({})]]), now).values()].map(outcomeOf);
  expect(outcomeBeside({ R1: { promise, target } })).toEqual(['held']);
  expect(outcomeBeside({ R1: { promise: 'Nothing is ever lost', target } })).toEqual(['of another promise']);
  expect(outcomeBeside({ R1: { promise, target: { ...target, count: 400 } } })).toEqual([
    'of another promise',
  ]);
  expect(outcomeBeside({ R1: { promise, target: { ...target, what: 'kills' } } })).toEqual([
    'of another promise',
  ]);
  expect(outcomeBeside({})).toEqual(['of another promise']);
});

test('The table takes the place of the one before it', () => {
  const text = 'Before\n<!-- trust: begin -->\nold\n<!-- trust: end -->\nAfter\n';
  const table = tableForDocs(['R1', 'R2'], new Map([['R1', row({ on: '2026-01-02', commit: 'abc1234' })]]));
  const next = withTable(withTable(text, table), table);
  expect(next).toBe(`Before
<!-- trust: begin -->
| row | what is promised | target | tried | failures | outcome | run on |
| --- | --- | --- | --- | --- | --- | --- |
| R1 | Nothing is lost | 500 faults | 500 | 0 | held | 2026-01-02, abc1234 |
| R2 |  |  |  |  | never run |  |
<!-- trust: end -->
After
`);
  expect(() => withTable('no place', table)).toThrow('no place for the table');
});
