import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CHANNELS } from '../../boards/host';
import { receive } from '../../electron/host/receive';
import { makeMachine } from '../electron/host/machine';
import { HARMFUL_INPUTS } from './harmful-inputs';
import { ENGINE_NAMES, HOSTILE_TEXTS } from './hostile-texts';

describe('a call of a page that was taken over', () => {
  it.each(Object.keys(CHANNELS))('%s takes nothing that it was not made for', async (channel) => {
    const machine = makeMachine();
    for (const [what, input] of HARMFUL_INPUTS) {
      if (CHANNELS[channel as keyof typeof CHANNELS].input.safeParse(input).success) {
        // A handle of the right shape that was never given out: the call answers that, and does nothing.
        const answer = await receive(machine.calls, channel, input);
        expect(answer, what).toMatchObject({ ok: true });
        expect(JSON.stringify(answer) ?? '', what).not.toMatch(/root:x:0|"text"/);
        continue;
      }
      expect(await receive(machine.calls, channel, input), what).toEqual({ ok: false, problem: 'bad-input' });
    }
    expect(readdirSync(machine.home)).toEqual([]);
  });

  it('of a channel that does not exist is refused, also by a name of the engine', async () => {
    const { calls } = makeMachine();
    for (const name of [...ENGINE_NAMES, ...HOSTILE_TEXTS, 'onRequest', 'open ', 'OPEN', 'open/../save'])
      expect(await receive(calls, name, undefined), name).toEqual({ ok: false, problem: 'unknown-channel' });
  });
});
