import { expect, test } from 'vitest';
import { type MachineState, RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import type { Build } from '../../../boards/document/build';
import { findingId } from '../../../boards/findings/finding';
import { findingsOf } from '../../../boards/findings/findings';
import { wordsOf } from '../../../boards/findings/words';
import { explainWords } from '../../../boards/findings/words/explain';
import { chosenWay, liveOf } from '../../../renderer/areas/wire/power/chosen-way';
import type { Selection } from '../../../renderer/store/session';
import { wired as build, slips } from '../../boards/library/demo-files';

const powerLed = { kind: 'plug', plug: { lead: 'power-led', plug: 'plug' } } as const;
const pin = (label: string) => ({ kind: 'connector', connector: 'panel', pin: label }) as const;
const wayOf = (selection: Selection, state: MachineState = RUNNING, of: Build = build) =>
  chosenWay({ build: of, selection, state });

test('a lit LED marks both its wires and both its pins on the drawing', () => {
  const way = wayOf(powerLed);
  expect(way).toMatchObject({ name: 'Power LED', ways: [{ path: { kind: 'flows' } }] });
  expect(liveOf(build, way)).toEqual({
    pins: [
      { connector: 'panel', pin: '2' },
      { connector: 'panel', pin: '4' },
    ],
    contacts: [
      { plug: powerLed.plug, hole: '1' },
      { plug: powerLed.plug, hole: '2' },
    ],
  });
});

test('chosen at its pin the way is the same', () => {
  expect(wayOf(pin('2'))?.ways).toEqual(wayOf(powerLed)?.ways);
});

test('of a switch that waits, the pin that is held up is told, and nothing is marked', () => {
  const way = wayOf({ kind: 'plug', plug: { lead: 'power-switch', plug: 'plug' } }, RESTING);
  expect(way?.ways).toMatchObject([{ path: { kind: 'still', holder: { pin: { pin: '6' } } } }]);
  expect(liveOf(build, way)).toBeNull();
});

test('a single wire is told by its colour and lead, with the volts and amps of its own way', () => {
  const way = wayOf({ kind: 'wire', plug: powerLed.plug, wire: 0 });
  expect(way?.name).toBe('The green wire of Power LED');
  expect(way?.ways.map(({ steps }) => steps)).toEqual(wayOf(powerLed)?.ways.map(({ steps }) => steps));
  expect(liveOf(build, way)?.contacts).toContainEqual({ plug: powerLed.plug, hole: '1' });
});

test('a finding is told in the words of the command line, in every state in which something flows', () => {
  const told = findingsOf(slips).map((finding) => {
    const { pins, leads } = finding;
    const way = wayOf({ kind: 'finding', id: findingId(finding), pins, leads }, RESTING, slips);
    return { finding, way, explained: explainWords(slips, finding) };
  });
  const flowing = told.filter(({ explained }) => explained.length > 0);
  expect(flowing.length).toBeGreaterThan(0);
  for (const { finding, way, explained } of flowing) {
    expect(way?.ways).toEqual(explained);
    expect(`${way?.name}.`).toContain(wordsOf(finding, slips).title.replace(/\.$/, ''));
    expect(liveOf(slips, way)?.pins.length).toBeGreaterThan(0);
  }
});

test('a finding that has been put right has no way', () => {
  expect(wayOf({ kind: 'finding', id: 'gone', pins: [], leads: [] })).toBeNull();
});

test('a whole connector, a plug on the shelf and nothing chosen have no way', () => {
  expect(wayOf({ kind: 'connector', connector: 'panel' })).toBeNull();
  const shelved = { ...build, seats: [] };
  expect(wayOf(powerLed, RUNNING, shelved)).toBeNull();
  expect(wayOf({ kind: 'wire', plug: powerLed.plug, wire: 0 }, RUNNING, shelved)).toBeNull();
  expect(wayOf({ kind: 'nothing' })).toBeNull();
});
