import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PinZ } from '../../boards/document/connector';
import { parseDocument } from '../../boards/document/parse';
import { serialize } from '../../boards/document/serialize';
import { applyCommand } from '../../boards/edit/apply';
import type { Command } from '../../boards/edit/command';
import { COMMANDS } from '../../boards/edit/commands';
import { layoutOf } from '../../renderer/areas/document/connector/header-layout';
import { copiedText, laidOn, readCopied } from '../../renderer/areas/document/connector/pin-clipboard';
import { Dice } from '../boards/dice';
import { everythingOf, openedBuild } from '../boards/document/frozen-files';
import { SPARES } from '../boards/edit/any-sequence';
import { MAKERS } from '../boards/edit/command-makers';
import { wired } from '../boards/library/demo-files';
import { memberAt, PAYLOAD_MEMBERS, PAYLOADS, withPayload } from './engine-payloads';
import { ENGINE_NAMES } from './hostile-texts';
import { changesSince, sharedNow } from './shared-objects';
import { workWith } from './worked-with';

const before = sharedNow();

describe('what all objects share', () => {
  it('is watched by value: something new, something else in its place, and something gone are all seen', () => {
    expect([...before.values()].map(({ name }) => name)).toEqual(
      expect.arrayContaining(['Object', 'Object.prototype', 'Array.prototype', 'Function.prototype', 'JSON']),
    );
    expect(changesSince(before)).toEqual([]);
    const shared: Record<string, unknown> = Object(Array.prototype);
    const { at } = shared;
    Reflect.defineProperty(shared, 'polluted', { value: 1, configurable: true });
    Reflect.defineProperty(shared, 'at', { value: () => 1 });
    expect(changesSince(before)).toEqual(['Array.prototype.at', 'Array.prototype.polluted']);
    Reflect.deleteProperty(shared, 'polluted');
    Reflect.deleteProperty(shared, 'at');
    expect(changesSince(before)).toEqual(['Array.prototype.at']);
    Reflect.defineProperty(shared, 'at', { value: at, writable: true, configurable: true });
    expect(changesSince(before)).toEqual([]);
  });
});

describe('names that the engine gives a meaning to', () => {
  it('are refused as names within a file of any kind, and change nothing that all objects share', () => {
    const files = [serialize(wired), everythingOf('build'), everythingOf('board'), everythingOf('case')];
    for (let at = 0; at < PAYLOADS; at++) {
      const opened = parseDocument(withPayload(files[at % files.length] ?? '', at));
      expect(opened.ok ? 'opened' : opened.problem.code, memberAt(at)).toBe('invalid');
      expect(changesSince(before), memberAt(at)).toEqual([]);
    }
  }, 120_000);

  it('are refused among what a command is given, and change nothing that all objects share', () => {
    const [situation] = fc.sample(fc.record(SPARES), { seed: 11, numRuns: 1 });
    if (situation === undefined) throw new Error('Nothing was drawn');
    const build = openedBuild(everythingOf('build'));
    const tried = new Set<string>();
    for (let at = 0; at < PAYLOADS; at++) {
      const { name } = COMMANDS[at % COMMANDS.length] ?? { name: 'unseat-all' };
      const sound = MAKERS[name]({ ...situation, build, dice: new Dice(at), text: 'x' });
      if (sound !== undefined) tried.add(name);
      const text = JSON.stringify(sound ?? { name: 'x' });
      // Arguments that are an empty object have no brace with a name behind it.
      const args: unknown = JSON.parse(text === '{}' ? `{${memberAt(at)}}` : withPayload(text, at));
      expect(applyCommand(build, { name, args } as Command).ok, `${name} ${memberAt(at)}`).toBe(false);
      expect(changesSince(before), `${name} ${memberAt(at)}`).toEqual([]);
    }
    expect(tried.size).toBeGreaterThan(COMMANDS.length * 0.8);
  }, 120_000);
});

describe('pins that were copied from a stranger’s program', () => {
  const [connector] = wired.board.connectors;
  if (connector === undefined) throw new Error('The demo has no connector');
  const layout = layoutOf(connector, { turn: 0, mirrored: false });
  const [first = ''] = layout.labels;
  const [head = '', line = ''] = copiedText(connector, layout, [first]).split('\n');
  const columns = head.split('\t');
  const more = columns.indexOf('more');
  const fields = Object.keys(PinZ.shape);

  /** Our own head, and a line in which one column holds a payload, another one for each number. */
  function pasted(at: number): { readonly column: string; readonly said: string; readonly text: string } {
    const column = at % columns.length;
    const turn = Math.floor(at / columns.length);
    const name = ENGINE_NAMES[turn % ENGINE_NAMES.length] ?? '';
    const said = column === more || turn >= ENGINE_NAMES.length ? `{${memberAt(turn)}}` : name;
    const words = columns.map((_, place) => (place === column ? said : (line.split('\t')[place] ?? '')));
    return { column: columns[column] ?? '', said, text: `${head}\n${words.join('\t')}` };
  }

  it('are read column by column: names of the engine are words where words may stand, and else refused', () => {
    const outcomes = new Map<string, Set<string>>();
    const members = new Set<string>();
    for (let at = 0; at < PAYLOADS; at++) {
      const { column, said, text } = pasted(at);
      if (column === 'more') members.add(said);
      const read = readCopied(text);
      outcomes.set(column, (outcomes.get(column) ?? new Set()).add(read.ok ? 'read' : 'refused'));
      if (read.ok) {
        for (const { pin } of read.value) {
          expect(Object.getPrototypeOf(pin), text).toBe(Object.prototype);
          expect(
            Reflect.ownKeys(pin).filter((key) => !fields.includes(String(key))),
            text,
          ).toEqual([]);
          // As it was written, in its own place; in “missing” only “yes” says anything.
          if (column !== 'missing') expect([pin.pin, pin.print, pin.name, pin.source?.where]).toContain(said);
        }
        const { pins } = laidOn(layout, [first], read.value);
        const filled = applyCommand(wired, {
          name: 'fill-pins',
          args: { connector: connector.id, pins: [...pins] },
        });
        expect(filled.ok, text).toBe(true);
      } else expect(read.problem).toMatch(/^Line\u00a02 of what was copied: .+ Nothing was pasted\.$/);
      expect(changesSince(before), text).toEqual([]);
    }
    const taken = [...outcomes].filter(([, all]) => all.has('read')).map(([column]) => column);
    expect(taken.sort()).toEqual(['missing', 'name', 'pin', 'print', 'where']);
    expect([...outcomes.keys()].sort()).toEqual([...columns].sort());
    expect(members.size).toBe(PAYLOAD_MEMBERS.length);
  }, 120_000);
});

describe('names that the engine gives a meaning to, in place of ids and labels', () => {
  it('are names like any other: such a build is opened, shown, checked and printed, and nothing else changes', () => {
    const text = everythingOf('build');
    const words = [...new Set([...text.matchAll(/: "([^"]*)"/g)].map(([, word = '']) => word))];
    let opened = 0;
    for (const [place, word] of words.entries())
      for (const name of ENGINE_NAMES.filter((_, at) => (place + at) % 3 === 0)) {
        const renamed = text.replaceAll(`"${word}"`, `"${name}"`);
        const read = parseDocument(renamed);
        if (!read.ok) continue;
        opened += 1;
        workWith(read.value);
        const again = parseDocument(serialize(read.value));
        expect(again.ok && serialize(again.value), `${word} as ${name}`).toBe(serialize(read.value));
        expect(changesSince(before), `${word} as ${name}`).toEqual([]);
      }
    expect(opened).toBeGreaterThan(words.length / 2);
  }, 120_000);
});
