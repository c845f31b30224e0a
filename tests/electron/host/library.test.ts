import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../../boards/document/limits';
import { CHANNELS, type SheetPlace } from '../../../boards/host';
import { asNobody, bareBoard, scratchFolder } from '../scratch';
import { FAULTS, faultyDisk, type Trouble } from './faulty-disk';
import { type Machine, makeMachine } from './machine';

const CALM: Trouble = { at: Number.POSITIVE_INFINITY, fault: 'EIO', lasting: false };

async function list({ calls }: Machine) {
  const listed = CHANNELS.listLibrary.output.parse(await calls.listLibrary());
  if (!listed.ok) throw new Error(listed.problem.code);
  return listed.value;
}

async function heads(machine: Machine) {
  const { files } = await list(machine);
  const handles = files.map(({ handle }) => handle);
  const read = CHANNELS.readSheetHeads.output.parse(await machine.calls.readSheetHeads({ handles }));
  return new Map(files.map(({ name }, at) => [name, read[at]]));
}

async function keep({ calls }: Machine, text: string, place: SheetPlace) {
  return CHANNELS.keepSheet.output.parse(await calls.keepSheet({ document: JSON.parse(text), place }));
}

async function keepNew(machine: Machine, title: string, name = 'bare.board.json') {
  const kept = await keep(machine, bareBoard(title), { kind: 'new', name });
  if (!kept.ok) throw new Error(kept.problem.code);
  return kept.value;
}

const usualFolder = ({ data }: Machine) => join(data, 'sheets');

describe('The library of sheets', () => {
  test('is an empty folder beside the settings at first, and says where it lies', async () => {
    const machine = makeMachine();
    expect(await list(machine)).toEqual({ folder: usualFolder(machine), usual: true, files: [], cut: false });
    expect(existsSync(usualFolder(machine))).toBe(true);
  });

  test('lists what was kept: kind, name, how much is in it, and the words it is found by', async () => {
    const machine = makeMachine();
    await keepNew(machine, 'Bench two');
    const demo = readFileSync(
      new URL('../../../boards/library/demo/bench.board.json', import.meta.url),
      'utf8',
    );
    await keep(machine, demo, { kind: 'new', name: 'demo.board.json' });
    const found = await heads(machine);
    expect(found.get('bare.board.json')).toMatchObject({
      outcome: 'sheet',
      kind: 'board',
      title: 'Bench two',
      count: 0,
    });
    const head = found.get('demo.board.json');
    expect(head?.outcome === 'sheet' && head.count).toBeGreaterThan(5);
    expect(head?.outcome === 'sheet' && head.words).toMatch(/PANEL.*power switch/s);
  });

  test('keeps two sheets of one name in two files, whole', async () => {
    const machine = makeMachine();
    const names = [(await keepNew(machine, 'One')).name, (await keepNew(machine, 'Two')).name];
    expect(names).toEqual(['bare.board.json', 'bare-2.board.json']);
    const texts = names.map((name) => readFileSync(join(usualFolder(machine), name), 'utf8'));
    expect(texts).toEqual([bareBoard('One'), bareBoard('Two')]);
  });

  test('keeps sheets that come at the same moment each in a file of its own', async () => {
    const machine = makeMachine();
    const titles = ['One', 'Two', 'Three', 'Four'];
    await Promise.all(titles.map((title) => keepNew(machine, title)));
    const found = [...(await heads(machine)).values()].map((head) => head?.outcome === 'sheet' && head.title);
    expect(found.toSorted()).toEqual(titles.toSorted());
  });

  test('puts a replaced sheet and a removed one among the removed, and loses neither', async () => {
    const machine = makeMachine();
    const { handle } = await keepNew(machine, 'One');
    await keep(machine, bareBoard('Two'), { kind: 'over', handle, expected: null, setAside: true });
    expect(await machine.calls.removeSheet({ handle })).toMatchObject({
      ok: true,
      value: { name: 'bare-2.board.json', folder: join(usualFolder(machine), 'removed') },
    });
    expect((await list(machine)).files).toEqual([]);
    const removed = join(usualFolder(machine), 'removed');
    const texts = readdirSync(removed).map((name) => readFileSync(join(removed, name), 'utf8'));
    expect(texts.toSorted()).toEqual([bareBoard('One'), bareBoard('Two')].toSorted());
  });

  test('takes nothing that could not be opened again, and no name that leads elsewhere', async () => {
    const machine = makeMachine();
    expect(await keep(machine, '{}', { kind: 'new', name: 'x.board.json' })).toMatchObject({
      problem: { code: 'invalid' },
    });
    for (const name of ['../x.json', 'x.sh', '.x.json', 'CON.json']) {
      expect(await keep(machine, bareBoard('x'), { kind: 'new', name })).toMatchObject({
        problem: { code: 'bad-name' },
      });
    }
    expect((await list(machine)).files).toEqual([]);
  });

  test('removes and replaces nothing that does not lie in it', async () => {
    const machine = makeMachine();
    const path = join(machine.home, 'mine.board.json');
    writeFileSync(path, bareBoard('Mine'));
    const handle = machine.host.handles.give(path);
    expect(await machine.calls.removeSheet({ handle })).toMatchObject({ problem: { code: 'stale-handle' } });
    const over = { kind: 'over', handle, expected: null, setAside: false } as const;
    expect(await keep(machine, bareBoard('x'), over)).toMatchObject({ problem: { code: 'stale-handle' } });
    expect(readFileSync(path, 'utf8')).toBe(bareBoard('Mine'));
  });

  test('reads a sheet again only where it has changed', async () => {
    const fs = faultyDisk(CALM);
    const machine = makeMachine({ fs });
    const { name } = await keepNew(machine, 'One');
    const reads = () => fs.log.filter((step) => step === 'read').length;
    await heads(machine);
    const before = reads();
    await heads(machine);
    expect(reads()).toBe(before);
    writeFileSync(join(usualFolder(machine), name), bareBoard('Changed outside'));
    expect((await heads(machine)).get(name)).toMatchObject({ title: 'Changed outside' });
  });
});

describe('What is in the folder and is no sheet is listed with its reason, and is in nobody’s way', () => {
  test.each<[string, (path: string) => void, object]>([
    ['text that is not JSON', (path) => writeFileSync(path, '{ oops'), { outcome: 'unsound' }],
    ['nothing', (path) => writeFileSync(path, ''), { outcome: 'unsound' }],
    [
      'a sheet with a field that cannot be',
      (path) => writeFileSync(path, bareBoard('x').replace('"widthMm": 200', '"widthMm": -3')),
      { outcome: 'unsound', lines: [expect.stringContaining('outline.widthMm')] },
    ],
    [
      'another program’s JSON',
      (path) => writeFileSync(path, '{"format":"somebody/else"}'),
      { outcome: 'unsound', lines: [expect.stringContaining('leadwright/board')] },
    ],
    [
      'bytes that are no text',
      (path) => writeFileSync(path, Buffer.from([0xff, 0xfe, 0x00, 0x80])),
      { outcome: 'unreadable', problem: { code: 'not-text' } },
    ],
    [
      'more than a sheet can be',
      (path) => {
        writeFileSync(path, '');
        truncateSync(path, LIMITS.fileBytes + 1);
      },
      { outcome: 'unreadable', problem: { code: 'too-large' } },
    ],
    [
      'a pipe',
      (path) => void execFileSync('mkfifo', [path]),
      { outcome: 'unreadable', problem: { code: 'special' } },
    ],
    [
      'a link that leads nowhere',
      (path) => symlinkSync(`${path}.gone`, path),
      { outcome: 'unreadable', problem: { code: 'not-found' } },
    ],
    [
      'a file that may not be read',
      (path) => {
        writeFileSync(path, bareBoard('x'));
        chmodSync(path, 0);
      },
      { outcome: 'unreadable', problem: { code: 'no-permission' } },
    ],
  ])('%s', async (_, make, expected) => {
    const machine = makeMachine();
    await keepNew(machine, 'Sound');
    for (const folder of [machine.data, usualFolder(machine)]) chmodSync(folder, 0o777);
    chmodSync(join(usualFolder(machine), 'bare.board.json'), 0o644);
    make(join(usualFolder(machine), 'odd.board.json'));
    const found = await asNobody(() => heads(machine));
    expect(found.get('odd.board.json')).toMatchObject(expected);
    expect(found.get('bare.board.json')).toMatchObject({ outcome: 'sheet', title: 'Sound' });
  });

  test('a build is told from a sheet', async () => {
    const machine = makeMachine();
    await list(machine);
    const demo = new URL('../../../boards/library/demo/wired.build.json', import.meta.url);
    writeFileSync(join(usualFolder(machine), 'wired.build.json'), readFileSync(demo));
    expect((await heads(machine)).get('wired.build.json')).toMatchObject({ outcome: 'build' });
  });

  test('folders, hidden files and files of other names are not listed', async () => {
    const machine = makeMachine();
    await list(machine);
    const inside = (name: string) => join(usualFolder(machine), name);
    mkdirSync(inside('folder.json'));
    for (const name of ['.hidden.json', 'notes.txt']) writeFileSync(inside(name), 'x');
    expect((await list(machine)).files).toEqual([]);
  });

  test('a link to a sheet is the sheet', async () => {
    const machine = makeMachine();
    await list(machine);
    writeFileSync(join(machine.home, 'mine.board.json'), bareBoard('Mine'));
    symlinkSync(join(machine.home, 'mine.board.json'), join(usualFolder(machine), 'link.board.json'));
    expect((await heads(machine)).get('link.board.json')).toMatchObject({ title: 'Mine' });
  });
});

describe('Another folder', () => {
  test('is the library from then on, also at the next start, until the usual one is chosen again', async () => {
    const machine = makeMachine();
    await keepNew(machine, 'In the usual folder');
    const other = scratchFolder();
    writeFileSync(join(other, 'there.board.json'), bareBoard('There'));
    const folder = machine.host.handles.give(other);
    expect(await machine.calls.moveLibrary({ folder })).toEqual({ ok: true, value: null });
    const again = makeMachine({ like: machine });
    expect(await list(again)).toMatchObject({
      folder: other,
      usual: false,
      files: [{ name: 'there.board.json' }],
    });
    await again.calls.moveLibrary({ folder: null });
    expect((await list(again)).files.map(({ name }) => name)).toEqual(['bare.board.json']);
  });

  test('that is none, or that nobody has chosen, is refused', async () => {
    const machine = makeMachine();
    const path = join(machine.home, 'x.board.json');
    writeFileSync(path, '');
    const use = (file: string) => machine.calls.moveLibrary({ folder: machine.host.handles.give(file) });
    expect(await use(path)).toMatchObject({ problem: { code: 'special' } });
    expect(await use(join(machine.home, 'gone'))).toMatchObject({ problem: { code: 'not-found' } });
    expect(await machine.calls.moveLibrary({ folder: 'A'.repeat(32) })).toMatchObject({
      problem: { code: 'stale-handle' },
    });
    expect(await list(machine)).toMatchObject({ usual: true });
  });

  test('that has gone since is said to be gone, and is not made anew', async () => {
    const machine = makeMachine();
    const other = join(scratchFolder(), 'stick');
    mkdirSync(other);
    await machine.calls.moveLibrary({ folder: machine.host.handles.give(other) });
    rmSync(other, { recursive: true });
    expect(await machine.calls.listLibrary()).toMatchObject({
      problem: { code: 'not-found', name: 'stick' },
    });
    expect(await keep(machine, bareBoard('x'), { kind: 'new', name: 'x.board.json' })).toMatchObject({
      problem: { code: 'folder-gone' },
    });
    expect(existsSync(other)).toBe(false);
  });

  test('that may not be written to keeps what it has, and says so', async () => {
    const machine = makeMachine();
    const other = scratchFolder();
    writeFileSync(join(other, 'there.board.json'), bareBoard('There'));
    await machine.calls.moveLibrary({ folder: machine.host.handles.give(other) });
    const handle = (await list(machine)).files[0]?.handle ?? '';
    chmodSync(other, 0o555);
    chmodSync(machine.data, 0o755);
    for (const name of readdirSync(machine.data)) chmodSync(join(machine.data, name), 0o644);
    await asNobody(async () => {
      const denied = { problem: { code: 'no-permission' } };
      expect(await keep(machine, bareBoard('x'), { kind: 'new', name: 'x.board.json' })).toMatchObject(
        denied,
      );
      const over = { kind: 'over', handle, expected: null, setAside: true } as const;
      expect(await keep(machine, bareBoard('x'), over)).toMatchObject(denied);
      expect(await machine.calls.removeSheet({ handle })).toMatchObject(denied);
    });
    expect(readFileSync(join(other, 'there.board.json'), 'utf8')).toBe(bareBoard('There'));
    expect(readdirSync(other)).toEqual(['there.board.json']);
  });
});

/** Where a text lies in the library, removed ones included. */
function placesOf(machine: Machine, text: string): readonly string[] {
  const folder = usualFolder(machine);
  const removed = join(folder, 'removed');
  return [folder, removed].filter(existsSync).flatMap((place) =>
    readdirSync(place)
      .filter((name) => name.endsWith('.json') && readFileSync(join(place, name), 'utf8') === text)
      .map((name) => join(place, name)),
  );
}

describe('A disk that fails at any step loses no sheet', () => {
  const [former, next] = [bareBoard('Former'), bareBoard('Next')];

  /** One piece of work with one trouble: how many file operations it took. */
  async function tried(
    trouble: Trouble,
    work: (machine: Machine, handle: string) => Promise<{ readonly ok: boolean }>,
    holds: (machine: Machine, done: boolean) => void,
  ): Promise<number> {
    const calm = makeMachine();
    const { name } = await keepNew(calm, 'Former');
    const fs = faultyDisk(trouble);
    const machine = makeMachine({ fs, like: calm });
    const { ok } = await work(machine, machine.host.handles.give(join(usualFolder(machine), name)));
    holds(machine, ok);
    return fs.log.length;
  }

  async function everyTrouble(trial: (trouble: Trouble) => Promise<number>): Promise<number> {
    const steps = await trial(CALM);
    let cases = 0;
    for (const fault of FAULTS) {
      for (let at = 0; at < steps; at++) {
        await trial({ at, fault, lasting: cases++ % 2 === 0 });
      }
    }
    return cases;
  }

  test('while one is replaced: the former is at its place, or the next is and the former among the removed', async () => {
    const cases = await everyTrouble((trouble) =>
      tried(
        trouble,
        ({ calls }, handle) =>
          calls.keepSheet({
            document: JSON.parse(next),
            place: { kind: 'over', handle, expected: null, setAside: true },
          }),
        (machine, done) => {
          const place = join(usualFolder(machine), 'bare.board.json');
          expect(readFileSync(place, 'utf8')).toBe(done ? next : former);
          expect(placesOf(machine, former)).not.toEqual([]);
        },
      ),
    );
    expect(cases).toBeGreaterThan(100);
  });

  test('while one is removed: it is in one place, and that is the one that was told', async () => {
    const cases = await everyTrouble((trouble) =>
      tried(
        trouble,
        ({ calls }, handle) => calls.removeSheet({ handle }),
        (machine, done) => {
          expect(placesOf(machine, former)).toHaveLength(1);
          expect(existsSync(join(usualFolder(machine), 'bare.board.json'))).toBe(!done);
        },
      ),
    );
    expect(cases).toBeGreaterThan(20);
  });

  test('while one is kept: it is there whole, or not at all', async () => {
    const cases = await everyTrouble((trouble) =>
      tried(
        trouble,
        ({ calls }) =>
          calls.keepSheet({ document: JSON.parse(next), place: { kind: 'new', name: 'next.board.json' } }),
        (machine, done) => {
          expect(placesOf(machine, next)).toHaveLength(done ? 1 : 0);
          expect(placesOf(machine, former)).toHaveLength(1);
        },
      ),
    );
    expect(cases).toBeGreaterThan(100);
  });
});
