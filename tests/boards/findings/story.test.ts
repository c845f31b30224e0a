import { describe, expect, test } from 'vitest';
import { RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import { storyOf } from '../../../boards/findings/story';
import { storyWords } from '../../../boards/findings/words/story';
import { demo } from './demo';
import { bench } from './harness';

const POWER = ['power'] as const;
const RESET = ['reset'] as const;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('pressing the buttons of a machine wired right', () => {
  const build = demo('wired');

  test.each([
    ['unplugged, nothing can happen', { ...RESTING, supply: 'unplugged', held: POWER }, 'unplugged'],
    ['off, it waits', RESTING, 'waits'],
    ['off, power starts it', { ...RESTING, held: POWER }, 'starts'],
    ['off, reset does nothing', { ...RESTING, held: RESET }, 'press-does-nothing'],
    ['asleep, power wakes it', { ...RESTING, supply: 'asleep', held: POWER }, 'wakes'],
    ['asleep, it sleeps', { ...RESTING, supply: 'asleep' }, 'sleeps'],
    ['on, it runs', RUNNING, 'runs'],
    // ACPI 6.0, 4.8.2.2.1: power held for four seconds or more is an unconditional off.
    ['on, power switches it off', { ...RUNNING, held: POWER }, 'goes-off'],
    // Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2.3: closing reset restarts the machine.
    ['on, reset restarts it', { ...RUNNING, held: RESET }, 'restarts'],
  ] as const)('%s', (_, state, code) => {
    expect(storyOf(build, state)).toMatchObject({ code, certain: true });
  });
});

describe('pressing power with leads in wrong places', () => {
  const panel = bench().header('panel-2x5', 'panel');

  test('with the power lead on the drive LED pins nothing happens, and the reason says where it is', () => {
    const { build } = panel.lead('power-switch-1x2', 'power').seat('power', 'panel', '1');
    const { title, reason } = storyWords(build, { ...RESTING, held: POWER });
    expect(title).toBe('Nothing happens.');
    expect(plain(reason)).toBe(
      'The power button joins pin 1 (drive LED +) of PANEL and pin 3 (drive LED −) of PANEL; less than 0.1 mA flows through it. ' +
        'Nothing touches the power switch input and nothing touches the reset input.',
    );
  });

  test('with power and reset exchanged the reset button starts it', () => {
    const { build } = panel
      .lead('power-switch-1x2', 'power')
      .lead('reset-switch-1x2', 'reset')
      .seat('power', 'panel', '5')
      .seat('reset', 'panel', '6');
    expect(storyOf(build, { ...RESTING, held: RESET }).code).toBe('starts-by-reset');
    expect(storyOf(build, { ...RUNNING, held: POWER }).code).toBe('restarts-by-power');
  });

  test('with a speaker on the power pins it starts by itself', () => {
    const { build } = panel.lead('speaker-1x2', 'beeper').seat('beeper', 'panel', '6');
    expect(storyOf(build, RESTING)).toMatchObject({ code: 'starts-by-itself', certain: true });
    expect(storyOf(build, RUNNING).code).toBe('goes-off-by-itself');
  });

  test('with an LED there it depends on the board, and the words say so', () => {
    const { build } = panel.lead('drive-led-1x2', 'drive').seat('drive', 'panel', '6');
    expect(storyOf(build, RESTING)).toMatchObject({ code: 'starts-by-itself', certain: false });
    expect(storyWords(build, RESTING).title).toMatch(/^On some boards: the machine starts by itself/);
  });

  test('with the power lead on the shelf the reason is that', () => {
    const { build } = panel.lead('power-switch-1x2', 'power');
    expect(storyWords(build, { ...RESTING, held: POWER }).reason).toContain(
      'The power button is on the shelf',
    );
  });
});
