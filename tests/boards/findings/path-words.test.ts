import { expect, test } from 'vitest';
import { BUSY, type MachineState, RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import { pathOf } from '../../../boards/circuit/path';
import { pathWords } from '../../../boards/findings/words/path';
import { bench } from './harness';

const panel = bench().header('panel-2x5', 'panel');
const drive = panel.lead('drive-led-1x2', 'drive').seat('drive', 'panel', '1').build;
const power = panel.lead('power-switch-1x2', 'power').seat('power', 'panel', '6').build;

function told(build: typeof drive, pin: string, state: MachineState) {
  const { head, steps } = pathWords(
    build,
    pathOf(build, { kind: 'pin', pin: { connector: 'panel', pin } }, state),
  );
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  return { head: plain(head), steps: steps.map(plain), raw: [head, ...steps] };
}

test('the loop of a lit drive LED reads from the supply to ground, with volts and amps on every line', () => {
  const { head, steps, raw } = told(drive, '1', BUSY);
  expect(head).toBe('8.9 mA flows, from the supply to ground:');
  expect(steps).toEqual([
    'the +5 V rail of the board: 5 V, 8.9 mA',
    'through about 330 Ω (150 Ω to 1 kΩ), to pin 1 (drive LED +) of PANEL: 2.1 V, 8.9 mA',
    'through the red wire of DRIVE: 2.1 V, 8.9 mA',
    'through the drive LED: 0.18 V, 8.9 mA',
    'through the white wire of DRIVE, to pin 3 (drive LED −) of PANEL: 0.18 V, 8.9 mA',
    'through an output of the board that pulls down, about 20 Ω (1 to 100 Ω), to ground: 0 V, 8.9 mA',
  ]);
  // A number keeps its unit on its line.
  for (const line of raw) expect(line).not.toMatch(/\d (?:V|mA|k?Ω)\b/);
});

test('a waiting power input says its level and what holds it', () => {
  expect(told(power, '6', RESTING)).toMatchObject({
    head: 'Nothing flows here; it is held at 3.3 V by the supply of the board’s inputs through about 10 kΩ (1 to 100 kΩ), at pin 6 (power switch) of PANEL.',
    steps: [],
  });
});

test('a dark LED’s other pin is held up by the feed on the far side of it', () => {
  expect(told(drive, '3', RUNNING).head).toContain('by the +5 V rail of the board through about 330 Ω');
  expect(told(drive, '1', RESTING).head).toContain(
    'held at 0 V by the +5 V rail of the board, which is off, through',
  );
});

test('where there is no pin nothing is said of a level', () => {
  expect(told(drive, '10', RUNNING).head).toBe('Nothing flows here, and nothing holds a level.');
});
