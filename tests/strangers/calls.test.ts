import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDocument } from '../../boards/document/parse';
import { serialize } from '../../boards/document/serialize';
import { applyCommand } from '../../boards/edit/apply';
import type { Command } from '../../boards/edit/command';
import { COMMANDS } from '../../boards/edit/commands';
import { CHANNELS } from '../../boards/host';
import { receive } from '../../electron/host/receive';
import { readCopied } from '../../renderer/areas/document/connector/pin-clipboard';
import { wired } from '../boards/library/demo-files';
import { makeMachine } from '../electron/host/machine';
import { HARMFUL_INPUTS, PAYLOADS } from './harmful-inputs';
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

describe('names that the engine gives a meaning to', () => {
  const before = ['Object', 'Array', 'String', 'Function'].map((name) => [name, namesOn(name)]);

  function namesOn(name: string): readonly string[] {
    const { prototype } = Reflect.get(globalThis, name) as { prototype: object };
    return Reflect.ownKeys(prototype).map(String);
  }

  /** A text of JSON in which the names stand as keys, at many depths and in many places. */
  function payload(at: number): string {
    const name = ENGINE_NAMES[at % ENGINE_NAMES.length] ?? '__proto__';
    const inner = at % 2 === 0 ? `{"polluted":${at}}` : `{"${name}":{"polluted":${at}}}`;
    const text = serialize(wired);
    const braces = [...text.matchAll(/[{]/g)].map(({ index }) => index);
    const brace = braces[(at * 7_919) % braces.length] ?? 0;
    return `${text.slice(0, brace + 1)}"${name}":${inner},${text.slice(brace + 1)}`;
  }

  it('change nothing that all objects share, in a thousand files, edits and pasted pins', () => {
    for (let at = 0; at < PAYLOADS; at++) {
      const text = payload(at);
      const opened = parseDocument(text);
      expect(opened.ok).toBe(false);
      const { name } = COMMANDS[at % COMMANDS.length] ?? { name: 'rename-build' };
      const args: unknown = JSON.parse(
        `{"${ENGINE_NAMES[at % ENGINE_NAMES.length]}":{"polluted":1},"name":"x"}`,
      );
      const applied = applyCommand(wired, { name, args } as Command);
      expect(applied.ok, name).toBe(false);
      readCopied(`row\tcolumn\n${text.slice(0, 200)}`);
      expect(Reflect.get({}, 'polluted')).toBeUndefined();
    }
    expect(['Object', 'Array', 'String', 'Function'].map((name) => [name, namesOn(name)])).toEqual(before);
  }, 120_000);
});
