import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { connectorOf } from '../../../../boards/document/lookup';
import { gridIndex } from '../../../../boards/document/numbering';
import { applyCommand } from '../../../../boards/edit/apply';
import { labelled, singleRow, thereAndBack, zigZag } from '../../../../boards/library/grids';
import { pinsOf } from '../../../../boards/pinout/pin-list/filling';
import { listProblemWords, listRefusalWords } from '../../../../boards/pinout/pin-list/list-words';
import { matchWord } from '../../../../boards/pinout/pin-list/match-word';
import { readPinList } from '../../../../boards/pinout/pin-list/pin-list';
import { bench, posts } from '../../fixtures/bench';

const grids = [zigZag(5), singleRow(4), thereAndBack(10), labelled(['A1 A2', 'B1 .']), singleRow(1)];

/** Text as it never should be, and text that looks like a list. */
const anyText = fc.oneof(
  fc.string({ maxLength: 400 }),
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc
    .array(
      fc.constantFrom(
        ...'0123456789ABP+-#|,;:.()/\t\n\r ='.split(''),
        'GND',
        'LED',
        'pin ',
        'D',
        '5V',
        '−',
        ' or ',
      ),
      { maxLength: 120 },
    )
    .map((parts) => parts.join('')),
);

describe('any text', () => {
  it('is read or refused in words, and what was read can be filled in', () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom(...grids), (text, grid) => {
        const result = readPinList(text, { grid });
        if (!result.ok) {
          expect(listRefusalWords(result.problem).title.length).toBeGreaterThan(10);
          return;
        }
        const { pins, problems } = result.value;
        for (const problem of problems) expect(listProblemWords(problem).title.length).toBeGreaterThan(10);
        const { cellOf } = gridIndex(grid);
        expect(pins.every(({ label }) => cellOf(label) !== undefined)).toBe(true);
        expect(new Set(pins.map(({ label }) => label)).size).toBe(pins.length);
        const build = bench([posts('header', grid, { pins: [] })], []);
        const filled = applyCommand(build, {
          name: 'fill-pins',
          args: { connector: 'header', pins: [...pinsOf(pins, { kind: 'manual' })] },
        });
        expect(filled.ok, JSON.stringify(filled)).toBe(true);
        if (filled.ok) expect(connectorOf(filled.value.board, 'header')?.pins).toHaveLength(pins.length);
      }),
      { seed: 20_261_126, numRuns: 3_000 },
    );
  });

  it('is understood the same in small letters, with underlines for spaces, and a second time', () => {
    const words = [
      'HDD LED+',
      'PWR BTN#',
      'RESET SW',
      'USB1 D-',
      'MIC BIAS',
      'KEY LOCK',
      'SENSE SEND',
      'FAN TACH',
      'NO PIN',
    ];
    fc.assert(
      fc.property(fc.constantFrom(...words), fc.boolean(), fc.boolean(), (word, small, joined) => {
        const spelt = joined ? word.replaceAll(' ', '_') : word;
        const meant = ({ means, sign, port }: { means: string; sign?: string; port?: string }) => [
          means,
          sign,
          port,
        ];
        const otherwise = matchWord(small ? spelt.toLowerCase() : spelt).map(meant);
        expect(otherwise).toEqual(matchWord(word).map(meant));
        expect(otherwise.length).toBe(1);
      }),
    );
  });

  it('of the worst kind does not keep the program: a million signs in one line, ranges upon ranges', () => {
    const million = 999_999;
    for (const sign of [' ', '-', '1', '(', 'a ', '1-4096,', '|', 'GND:', '1 GND,', '+']) {
      const text = `1 ${sign.repeat(Math.floor(million / sign.length) - 2)}`;
      const result = readPinList(text, { grid: zigZag(5) });
      expect(result.ok || result.problem.code !== 'too-long', sign).toBe(true);
    }
    for (const line of [`9 pin header${' '.repeat(million - 20)}x`, `9 ${'pin header '.repeat(80_000)}x`])
      expect(readPinList(`${line}\n1 GND`, { grid: zigZag(5) }).ok).toBe(true);
  }, 60_000);
});
