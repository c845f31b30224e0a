import { expect, test } from 'vitest';
import { RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import { chosenWay, liveOf } from '../../../renderer/areas/wire/power/chosen-way';
import { wired as build } from '../../boards/library/demo-files';

const powerLed = { kind: 'plug', plug: { lead: 'power-led', plug: 'plug' } } as const;
const pin = (label: string) => ({ kind: 'connector', connector: 'panel', pin: label }) as const;

test('a lit LED marks both its wires and both its pins on the drawing', () => {
  const way = chosenWay(build, powerLed, RUNNING);
  expect(way).toMatchObject({ name: 'Power LED', path: { kind: 'flows' } });
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
  expect(chosenWay(build, pin('2'), RUNNING)?.path).toEqual(chosenWay(build, powerLed, RUNNING)?.path);
});

test('of a switch that waits, the pin that is held up is told, and nothing is marked', () => {
  const way = chosenWay(build, { kind: 'plug', plug: { lead: 'power-switch', plug: 'plug' } }, RESTING);
  expect(way?.path).toMatchObject({ kind: 'still', holder: { pin: { pin: '6' } } });
  expect(liveOf(build, way)).toBeNull();
});

test('a whole connector, a plug on the shelf and nothing chosen have no way', () => {
  expect(chosenWay(build, { kind: 'connector', connector: 'panel' }, RUNNING)).toBeNull();
  expect(chosenWay({ ...build, seats: [] }, powerLed, RUNNING)).toBeNull();
  expect(chosenWay(build, { kind: 'nothing' }, RUNNING)).toBeNull();
});
