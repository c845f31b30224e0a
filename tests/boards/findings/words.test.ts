import { describe, expect, test } from 'vitest';
import { gridIndex } from '../../../boards/document/numbering';
import { orientationOf, oriented } from '../../../boards/drawing/orientation';
import { findingsOf } from '../../../boards/findings/findings';
import { RULES } from '../../../boards/findings/rules/index';
import { wordsOf } from '../../../boards/findings/words';
import { cellCentre } from '../../../boards/fit/geometry';
import { demo } from './demo';
import { EXAMPLES } from './examples';
import { Bench } from './harness';

const CODES = RULES.map(({ id }) => id);

/** One short sentence: a capital, a full stop, no alarm, no code, no placeholder. */
const SENTENCE = /^[A-Z+−][^!]*\.$/;
const NOT_FOR_PEOPLE = /\berror\b|undefined|NaN|\[object|\bunknown part\b/i;

describe('every code has words', () => {
  test('and an example of it', () => {
    expect(Object.keys(EXAMPLES).toSorted()).toEqual([...CODES].toSorted());
  });

  test.each(CODES)('%s', (code) => {
    const { build } = EXAMPLES[code];
    const finding = EXAMPLES[code].finding(code);
    const { title, reason, source } = wordsOf(finding, build);
    expect(title).toMatch(SENTENCE);
    expect(title.length).toBeLessThan(100);
    expect(reason).toMatch(SENTENCE);
    expect(source).not.toBe('');
    for (const text of [title, reason, ...finding.remedies.map((remedy) => remedy.text)]) {
      expect(text).not.toMatch(NOT_FOR_PEOPLE);
      expect(text).not.toMatch(/\d [VA]\b|pins? \d/); // A number keeps its unit: no plain space between them.
      expect(text).not.toContain('  ');
    }
    for (const remedy of finding.remedies) expect(remedy.text).toMatch(SENTENCE);
  });
});

test('the eight slips of the demo, in the order in which they are told', () => {
  const build = demo('eight-slips');
  const told = findingsOf(build)
    .filter(({ severity }) => severity === 'danger' || severity === 'fault')
    .map((finding) => wordsOf(finding, build).title.replaceAll('\u00a0', ' '));
  expect(told).toEqual([
    '+12 V would reach Front USB and could destroy what is plugged in.',
    'The USB supply would reach the data wires of Front 1394 and could destroy port or device.',
    'Whatever is plugged into the USB 2.0 port would be fed +5 V backwards.',
    '+12 V would reach a wire of the fan that is not made for it.',
    'The power button would reset the machine, and the reset button would start it.',
    'The board would report an open case all the time.',
    'The board could lose its settings, or not start at all.',
    'Drive LED is one pin off.',
    'CPU fan is one pin off.',
    'The power LED would stay dark.',
  ]);
});

test('a reason names every pin by what it does, as the manual would', () => {
  const { build } = EXAMPLES.reversed;
  const { reason } = wordsOf(EXAMPLES.reversed.finding('reversed'), build);
  expect(reason).toBe(
    'LED has the + wire on pin\u00a04 (power LED −) and the − wire on pin\u00a02 (power LED +) of PANEL. It is the wrong way round: up to 5.2\u00a0V backwards, and no current. Asleep it may light, where the board turns the pair round for a two-colour LED.',
  );
});

describe('a direction is told as the board lies in front of the person', () => {
  test.each([
    [{ turn: 0, mirrored: false }, 'column to the left'],
    [{ turn: 90, mirrored: false }, 'column up'],
    [{ turn: 180, mirrored: false }, 'column to the right'],
    [{ turn: 270, mirrored: false }, 'column down'],
    [{ turn: 0, mirrored: true }, 'column to the right'],
    [{ turn: 90, mirrored: true }, 'column down'],
    [{ turn: 180, mirrored: true }, 'column to the left'],
    [{ turn: 270, mirrored: true }, 'column up'],
  ] as const)('%o: %s', (view, direction) => {
    const seen = new Bench(EXAMPLES.shifted.build).with({ view });
    expect(wordsOf(seen.finding('shifted'), seen.build).reason).toContain(`one ${direction}.`);
  });

  // What is drawn is the measure: where the one pin stands in the drawing, seen from the other.
  const turns = [0, 90, 180, 270] as const;
  test.each(
    turns.flatMap((place) =>
      turns.flatMap((turn) => [false, true].map((mirrored) => ({ place, turn, mirrored }))),
    ),
  )(
    'it points as it is drawn: connector at $place, view at $turn, mirrored $mirrored',
    ({ place, ...view }) => {
      const { board } = EXAMPLES.shifted.build;
      const connectors = board.connectors.map((each) => ({ ...each, place: { ...each.place, turn: place } }));
      const seen = new Bench(EXAMPLES.shifted.build).with({ view, board: { ...board, connectors } });
      const [panel] = connectors;
      const drawn = (pin: string) => {
        const cell = panel && gridIndex(panel.grid).cellOf(pin);
        if (!panel || !cell) throw new Error(`No pin ${pin}`);
        const { xMm, yMm } = cellCentre(panel, cell);
        return oriented(orientationOf(view), { x: xMm, y: yMm });
      };
      // The plug is on pins 3 and 5, its place is 1 and 3.
      const [now, there] = [drawn('3'), drawn('1')];
      const [right, down] = [there.x - now.x, there.y - now.y].map(Math.round);
      const direction = right
        ? right > 0
          ? 'to the right'
          : 'to the left'
        : (down ?? 0) > 0
          ? 'down'
          : 'up';
      expect(wordsOf(seen.finding('shifted'), seen.build).reason).toContain(`one column ${direction}.`);
    },
  );
});
