import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { BoardSheetZ } from '../../boards/document/board-sheet';
import { BuildZ } from '../../boards/document/build';
import { CaseSheetZ } from '../../boards/document/case-sheet';
import type { DocumentKind } from '../../boards/document/document';
import { parseDocument } from '../../boards/document/parse';
import { NameZ } from '../../boards/document/text';
import { LISTS } from '../../boards/handover/order';
import { check } from '../../electron/cli/check';
import { inRoot } from '../../electron/start/place.mjs';
import { everythingOf, openedBuild } from '../boards/document/frozen-files';
import { type Machine, makeMachine } from '../electron/host/machine';
import { everyPrint } from './every-print';
import { withEveryText } from './every-text';
import { pathsAskedBy } from './watched-files';
import { WAYS_OUT } from './ways-out';

const KINDS: readonly (readonly [DocumentKind, z.core.$ZodType])[] = [
  ['build', BuildZ],
  ['board', BoardSheetZ],
  ['case', CaseSheetZ],
];

/** A document with every field there is, and these texts in it; of several each stands in the next field. */
function saying(kind: DocumentKind, schema: z.core.$ZodType, texts: readonly string[]): string {
  const textFor = (place: number) => texts[place % texts.length] ?? '';
  return JSON.stringify(withEveryText(schema, JSON.parse(everythingOf(kind)), textFor));
}

/** What a file may hold; the others are refused when it is opened. */
const TAKEN = WAYS_OUT.filter((way) => NameZ.safeParse(way).success);
/** Every text of a build is printed as that many ways. */
const TURNS = 10;

/** What every kind of paper, and every list, asks of the disk while it is made of a text. */
async function printing(machine: Machine, text: string): Promise<readonly string[]> {
  const build = openedBuild(text);
  const list = machine.host.handles.give(join(machine.home, 'list.csv'));
  const asked = await pathsAskedBy(async () => {
    for (const print of everyPrint(build))
      expect((await machine.calls.drawPaper({ document: text, print, page: 1 })).ok, print.kind).toBe(true);
    for (const each of LISTS)
      expect((await machine.calls.saveList({ handle: list, build: text, list: each })).ok, each).toBe(true);
  });
  return [
    ...new Set(asked.map((path) => path.replace(/\.leadwright-[0-9a-f]+\.tmp$/, '(temporary)'))),
  ].sort();
}

describe('the watch over the disk', () => {
  it('sees whatever is asked, by any function and whether or not it is there', async () => {
    const asked = await pathsAskedBy(async () => {
      readFileSync(inRoot('package.json'));
      await expect(import('node:fs/promises').then(({ stat }) => stat('/not/there'))).rejects.toThrow();
    });
    expect(asked).toEqual([inRoot('package.json'), '/not/there'].sort());
  });
});

describe('what a document says', () => {
  it('is never taken for the name of a file: whatever opens or checks it asks for the document alone', async () => {
    let opened = 0;
    for (const [kind, schema] of KINDS)
      for (const way of WAYS_OUT) {
        const machine = makeMachine();
        const path = join(machine.home, `desk.${kind}.json`);
        writeFileSync(path, saying(kind, schema, [way]));
        const handle = machine.host.handles.give(path);
        const asked = await pathsAskedBy(async () => {
          const found = await machine.calls.open({ handle });
          if (!found.ok) throw new Error(found.problem.code);
          const parsed = parseDocument(found.value.text);
          if (!parsed.ok) expect(parsed.problem.code, way).toBe('invalid');
          else opened += 1;
          const { files } = await check([path]);
          expect(files.map(({ outcome }) => outcome === 'refused')).toEqual([!parsed.ok]);
        });
        expect(asked, `${kind} ${JSON.stringify(way)}`).toEqual([path]);
      }
    // The others hold signs that no text of a file may hold, and are refused.
    expect(TAKEN.length).toBeGreaterThan(WAYS_OUT.length / 2);
    expect(opened).toBe(KINDS.length * TAKEN.length);
  }, 120_000);

  it('asks for nothing but the file that was chosen when it is printed or listed, whatever it says', async () => {
    const machine = makeMachine();
    // Fonts and the code that lays pages out are read once, when they are first wanted.
    await printing(machine, saying('build', BuildZ, ['quiet']));
    for (let turn = 0; turn < TURNS; turn++) {
      const from = Math.floor((turn * TAKEN.length) / TURNS);
      const ways = [...TAKEN.slice(from), ...TAKEN.slice(0, from)];
      expect(await printing(machine, saying('build', BuildZ, ways)), ways[0]).toEqual(
        [machine.home, join(machine.home, '(temporary)'), join(machine.home, 'list.csv')].sort(),
      );
    }
  }, 120_000);
});
