import { describe, expect, it } from 'vitest';
import {
  emptyWords,
  labelProblem,
  numberingFrom,
  typedLabels,
} from '../../../renderer/areas/document/connector/free-labels';
import { readCount, readPitch } from '../../../renderer/words/size-words';
import { grid } from '../../boards/fixtures/bench';

const NBSP = '\u00a0';

describe('a size as it is typed', () => {
  it('is 1 to 64 rows or columns', () => {
    expect(readCount('40', 'columns')).toEqual({ ok: true, value: 40 });
    expect(readCount(' 64 ', 'rows')).toEqual({ ok: true, value: 64 });
    const no = { ok: false, problem: 'A header has 1 to 64 rows. Type a whole number of them.' };
    for (const typed of ['65', '0', '-1', '2.5', '1e1', 'two', '', '999999999999'])
      expect(readCount(typed, 'rows'), typed).toEqual(no);
  });

  it('is a pitch in millimetres, with a point or a comma', () => {
    expect(readPitch('2.54')).toEqual({ ok: true, value: 2.54 });
    expect(readPitch('1,27 mm')).toEqual({ ok: true, value: 1.27 });
    const problem = `A pitch is above 0 and up to 50${NBSP}mm. Type one such as 2.54.`;
    for (const typed of ['0', '51', '-2', 'mm', '', '2.54 in', '1.2.3'])
      expect(readPitch(typed), typed).toEqual({ ok: false, problem });
  });
});

describe('labels as they are typed', () => {
  it('begin with those there are, and an empty one is no position', () => {
    const labels = typedLabels(grid(2, 2));
    expect(labels).toEqual([
      ['1', '2'],
      ['3', '4'],
    ]);
    expect(
      numberingFrom([
        ['A1', ' '],
        ['B1', 'B2 '],
      ]),
    ).toEqual({
      scheme: 'free',
      labels: [
        ['A1', null],
        ['B1', 'B2'],
      ],
    });
    expect(
      emptyWords([
        ['A1', ''],
        ['', 'B2'],
      ]),
    ).toBe(`The 2${NBSP}positions without a label are left out: no pin and no hole is there.`);
    expect(emptyWords(labels)).toBe('');
  });

  it('cannot stand twice, cannot be any sign, and cannot all be empty', () => {
    expect(labelProblem([['A1', 'A1']])).toBe(
      '“A1” stands on two positions. Give one of them another label.',
    );
    expect(labelProblem([['A1', 'a1']])).toBe('');
    expect(labelProblem([['A.1', '2']])).toBe(
      '“A.1” cannot be a label. Use up to eight letters, digits, + or −.',
    );
    expect(labelProblem([['', ' ']])).toBe('A header has at least one position. Type a label for it.');
  });
});
