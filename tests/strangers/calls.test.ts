import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CHANNELS } from '../../boards/host';
import { INPUT_LIMIT_BYTES, inputIn, receive } from '../../electron/host/receive';
import { makeMachine } from '../electron/host/machine';
import { HARMFUL_INPUTS, UNREADABLE } from './harmful-inputs';
import { ENGINE_NAMES, HOSTILE_TEXTS } from './hostile-texts';

/** Read once, as either door reads them: some are long. */
const INPUTS = HARMFUL_INPUTS.map(([what, json]) => {
  const read = inputIn(json);
  if (read === null) throw new Error(`${what} cannot be sent at all`);
  return [what, read.value] as const;
});

describe('a call of a page that was taken over', () => {
  it.each(Object.keys(CHANNELS))('%s takes nothing that it was not made for', async (channel) => {
    const machine = makeMachine();
    for (const [what, input] of INPUTS) {
      const answer = await receive(machine.calls, channel, input);
      if (CHANNELS[channel as keyof typeof CHANNELS].input.safeParse(input).success) {
        // A handle of the right shape that was never given out: the call answers that, and does nothing.
        expect(answer, what).toMatchObject({ ok: true });
        expect(JSON.stringify(answer) ?? '', what).not.toMatch(/root:x:0|"text"/);
      } else expect(answer, what).toEqual({ ok: false, problem: 'bad-input' });
    }
    expect(readdirSync(machine.home)).toEqual([]);
  });

  it.each(UNREADABLE)('that brings %s brings nothing', (_what, json) => {
    expect(inputIn(json)).toBeNull();
  });

  it('brings as much as a call may bring, and not a letter more', () => {
    const text = (letters: number) => `"${'x'.repeat(letters - 2)}"`;
    expect(inputIn(text(INPUT_LIMIT_BYTES))).not.toBeNull();
    expect(inputIn(text(INPUT_LIMIT_BYTES + 1))).toBeNull();
  });

  it('of a channel that does not exist is refused, also by a name of the engine', async () => {
    const { calls } = makeMachine();
    for (const name of [...ENGINE_NAMES, ...HOSTILE_TEXTS, 'onRequest', 'open ', 'OPEN', 'open/../save'])
      expect(await receive(calls, name, undefined), name).toEqual({ ok: false, problem: 'unknown-channel' });
  });
});
