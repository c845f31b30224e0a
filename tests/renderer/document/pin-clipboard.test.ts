import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pinOf } from '../../../boards/document/lookup';
import { layoutOf } from '../../../renderer/areas/document/connector/header-layout';
import { copiedText, laidOn, readCopied } from '../../../renderer/areas/document/connector/pin-clipboard';
import { arbitraryConnector } from '../../boards/arbitrary-build';
import { grid, posts } from '../../boards/fixtures/bench';

// Text with tabs between its fields, as tables are copied: common practice, no source.

const NBSP = '\u00a0';
const UPRIGHT = { turn: 0, mirrored: false } as const;
const panel = posts('panel', grid(2, 3), {
  pins: ['drive-led-feed', 'power-led-feed', null, 'drive-led-sink', 'ground'],
});
const layout = layoutOf(panel, UPRIGHT);

function read(text: string) {
  const result = readCopied(text);
  if (!result.ok) throw new Error(result.problem);
  return result.value;
}

function refused(text: string): string {
  const result = readCopied(text);
  if (result.ok) throw new Error('Was taken');
  return result.problem;
}

describe('copied pins', () => {
  it('are lines of words between tabs, with a head, from the top left of what was chosen', () => {
    expect(copiedText(panel, layout, ['2', '3', '5'])).toBe(
      [
        'row\tcolumn\tpin\tmissing\tsignal\tport\tbelongs to\tprint\tname\tread in\twhere\tsure\tmore',
        '0\t0\t2\t\tpower-led-feed\t\t\t\t\t\t\t\t',
        '0\t1\t3\tyes\t\t\t\t\t\t\t\t\t',
        '1\t0\t5\t\tground\t\t\t\t\t\t\t\t',
      ].join('\n'),
    );
  });

  it('come back as they were, with everything that is known of them', () => {
    fc.assert(
      fc.property(arbitraryConnector('one'), (connector) => {
        const drawn = layoutOf(connector, UPRIGHT);
        const copied = read(copiedText(connector, drawn, drawn.labels));
        expect(copied.map(({ pin }) => pin)).toEqual(drawn.labels.map((label) => pinOf(connector, label)));
      }),
      { seed: 61, numRuns: 200 },
    );
  });

  it('lie on another header as they lay, from the first chosen pin on', () => {
    const copied = read(copiedText(panel, layout, ['1', '2', '4', '5']));
    const other = layoutOf(posts('other', grid(2, 5)), UPRIGHT);
    const { pins, outside } = laidOn(other, ['4'], copied);
    expect(outside).toBe(0);
    expect(pins.map(({ pin, signal }) => `${pin} ${signal}`)).toEqual([
      '4 drive-led-feed',
      '5 power-led-feed',
      '9 drive-led-sink',
      '10 ground',
    ]);
    expect(laidOn(other, ['10'], copied)).toMatchObject({ pins: [{ pin: '10' }], outside: 3 });
  });

  it('fill all that are chosen where a single one was copied', () => {
    const copied = read(copiedText(panel, layout, ['5']));
    expect(laidOn(layout, ['1', '3'], copied).pins).toEqual([
      { pin: '1', signal: 'ground' },
      { pin: '3', signal: 'ground' },
    ]);
  });
});

describe('text that is no copied pins', () => {
  const HEAD = copiedText(panel, layout, ['1']).split('\n')[0] ?? '';

  it('is answered in words and pastes nothing', () => {
    expect(refused('1 PLED+\n2 PLED-')).toMatch(/^What was copied are no pins of a header\./);
    expect(refused('')).toMatch(/^What was copied are no pins of a header\./);
    expect(refused(HEAD)).toBe('There is no pin in what was copied.');
    expect(refused(`${HEAD}\n0\t0\t1\t\tpower-swich-input`)).toMatch(
      new RegExp(`^Line${NBSP}2 of what was copied: “signal” has to be .* Nothing was pasted\\.$`),
    );
    expect(refused(`${HEAD}\nx\t0\t1`)).toBe(
      `Line${NBSP}2 of what was copied: it has to begin with a row and a column, counted from 0. Nothing was pasted.`,
    );
    expect(refused(`${HEAD}\n0\t0\t1\t\t\t\t\t\t\t\t\t\t{`)).toMatch(
      /its last column is not as it was copied/,
    );
    expect(refused(`${HEAD}\n0\t0\t1\t\tground\t\t\t\t\t\t\t7\t`)).toMatch(/“confidence” has to be/);
    expect(refused([HEAD, ...new Array<string>(4097).fill('0\t0\t1')].join('\n'))).toMatch(/more pins than/);
  });
});
