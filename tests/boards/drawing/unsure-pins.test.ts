import { expect, it } from 'vitest';
import type { Pin } from '../../../boards/document/connector';
import { contradictions, surenessOf } from '../../../boards/document/sureness';
import { blockOf, USUAL_ROOMS } from '../../../boards/drawing/block';
import { measureByTable } from '../../../boards/drawing/measure';
import { orientationOf } from '../../../boards/drawing/orientation';
import { grid, posts } from '../fixtures/bench';

// How sure a reading is, in words and as it is drawn: common practice, no source.

const pin = (over: Omit<Pin, 'pin'>): Pin => ({ pin: '1', signal: 'ground', ...over });

it('a pin is unknown, guessed, or as sure as its source', () => {
  expect(surenessOf({ pin: '1' })).toBe('unknown');
  expect(surenessOf(pin({ signal: 'unknown', confidence: 1 }))).toBe('unknown');
  expect(surenessOf(pin({ source: { kind: 'guessed' }, confidence: 1 }))).toBe('guessed');
  expect(surenessOf(pin({}))).toBe('unsaid');
  const steps = [0.49, 0.5, 0.75, 0.95].map((confidence) => surenessOf(pin({ confidence })));
  expect(steps).toEqual(['guessed', 'likely', 'fairly', 'sure']);
  expect(surenessOf({ pin: '1', missing: true, confidence: 0.95 })).toBe('sure');
});

it('another source contradicts by another signal, another port, or by whether there is a pin', () => {
  const source = { kind: 'print' } as const;
  const against = (known: Omit<Pin, 'pin'>, alternatives: NonNullable<Pin['alternatives']>) =>
    contradictions(pin({ ...known, alternatives })).length;
  expect(against({}, [{ signal: 'ground', source }])).toBe(0);
  expect(against({}, [{ signal: 'supply-5v', source }])).toBe(1);
  expect(against({ channel: 'A' }, [{ signal: 'ground', channel: 'B', source }])).toBe(1);
  expect(against({ channel: 'A' }, [{ signal: 'ground', source }])).toBe(0);
  expect(against({}, [{ signal: 'no-connection', missing: true, source }])).toBe(1);
});

it('pins that nobody is sure of are drawn as such, and a missing one as missing', () => {
  const header = posts('j1', grid(1, 4), {
    pins: ['ground', 'supply-5v', null],
  });
  const guessed = { pin: '2', signal: 'supply-5v', source: { kind: 'guessed' } } as const;
  const pins = header.pins.map((one) => (one.pin === '2' ? guessed : one));
  const block = blockOf(
    { ...header, pins },
    orientationOf({ turn: 0, mirrored: false }),
    USUAL_ROOMS,
    measureByTable,
  );
  expect(block.pins.map(({ unsure, missing }) => [unsure, missing])).toEqual([
    [false, false],
    [true, false],
    [false, true],
    [true, false],
  ]);
});
