import { mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CHANNELS } from '../../../boards/host';
import { receive } from '../../../electron/host/receive';
import { bareBoard, bareSheet, scratchFolder } from '../scratch';
import { type Machine, makeMachine } from './machine';

/** A machine with one board sheet in the person's folder, and the handle that its folder was shown with. */
async function withBoard(): Promise<Machine & { readonly path: string; readonly handle: string }> {
  const machine = makeMachine();
  const path = join(machine.home, 'bare.board.json');
  writeFileSync(path, bareBoard('Bare'));
  const { entries } = await browse(machine, null);
  const handle = entries.find(({ name }) => name === 'bare.board.json')?.handle ?? '';
  return { ...machine, path, handle };
}

async function browse({ calls }: Machine, folder: string | null) {
  const shown = CHANNELS.browse.output.parse(await calls.browse({ folder }));
  if (!shown.ok) throw new Error(shown.problem.code);
  return shown.value;
}

describe('Opening and saving', () => {
  test('A file that was shown can be opened, changed, saved, and opened again', async () => {
    const { calls, handle, path, home } = await withBoard();
    const opened = CHANNELS.open.output.parse(await calls.open({ handle }));
    if (!opened.ok) throw new Error(opened.problem.code);
    expect(opened.value).toMatchObject({
      name: 'bare.board.json',
      folder: home,
      text: bareBoard('Bare'),
      readOnly: false,
    });
    const saved = CHANNELS.save.output.parse(
      await calls.save({ handle, document: bareSheet('Changed'), expected: opened.value.stamp }),
    );
    expect(saved).toMatchObject({ ok: true, value: { handle, name: 'bare.board.json', durable: true } });
    expect(readFileSync(path, 'utf8')).toBe(bareBoard('Changed'));
  });

  test('What is written is laid out for people, in the order of the schema, however it was sent', async () => {
    const { calls, handle, path } = await withBoard();
    const backwards = Object.fromEntries(Object.entries(JSON.parse(bareBoard('Changed'))).reverse());
    expect(await calls.save({ handle, document: backwards, expected: null })).toMatchObject({
      ok: true,
    });
    expect(readFileSync(path, 'utf8')).toBe(bareBoard('Changed'));
  });

  test('Saving twice in a row is no change outside', async () => {
    const { calls, handle } = await withBoard();
    const opened = await calls.open({ handle });
    const first = await calls.save({
      handle,
      document: bareSheet('One'),
      expected: opened.ok ? opened.value.stamp : '',
    });
    const second = await calls.save({
      handle,
      document: bareSheet('Two'),
      expected: first.ok ? first.value.stamp : '',
    });
    expect(second).toMatchObject({ ok: true });
  });

  test('Two saves at once are made one after the other, and the last one stands', async () => {
    const { calls, handle, path } = await withBoard();
    const names = ['One', 'Two', 'Three', 'Four'];
    const saves = names.map((name) => calls.save({ handle, document: bareSheet(name), expected: null }));
    expect((await Promise.all(saves)).every(({ ok }) => ok)).toBe(true);
    expect(readFileSync(path, 'utf8')).toBe(bareBoard('Four'));
  });

  test('What could not be opened again does not replace what can', async () => {
    const { calls, handle, path } = await withBoard();
    const document = { ...bareSheet('Bare'), outline: { widthMm: -3, depthMm: 170 } };
    const saved = CHANNELS.save.output.parse(await calls.save({ handle, document, expected: null }));
    expect(saved).toMatchObject({ problem: { code: 'invalid', path: 'outline.widthMm' } });
    const deep = JSON.parse('['.repeat(100_000) + ']'.repeat(100_000));
    const keyed = JSON.parse(bareBoard('Bare').replace('{', '{"__proto__": {"x": 1},'));
    const whole = bareBoard('Bare');
    for (const broken of [undefined, null, 7, whole, [], deep, keyed, { format: 'leadwright/board' }]) {
      expect(await calls.save({ handle, document: broken, expected: null })).toMatchObject({
        problem: { code: 'invalid' },
      });
    }
    expect(readFileSync(path, 'utf8')).toBe(bareBoard('Bare'));
  });

  test('What is longer than a file that is opened is not saved', async () => {
    const { calls, handle, path } = await withBoard();
    const grid = { rows: 1, cols: 1, pitchMm: 2.54, numbering: { scheme: 'by-row', from: 'top-left' } };
    const place = { xMm: 10, yMm: 10, turn: 0 };
    // Three bytes for each letter: of letters there are few enough.
    const notes = '電'.repeat(10_000);
    const connectors = (many: number) =>
      Array.from({ length: many }, (_, at) => ({
        ...{ id: `c-${at}`, print: '', title: 'panel', family: 'pin-header' },
        ...{ grid, pins: [], place, notes },
      }));
    const save = (many: number) =>
      calls.save({
        handle,
        document: { ...bareSheet('Long'), connectors: connectors(many) },
        expected: null,
      });
    expect(await save(1_000)).toMatchObject({ ok: true });
    const saved = readFileSync(path);
    expect(await save(1_200)).toEqual({
      ok: false,
      problem: { code: 'invalid', name: 'bare.board.json', path: '', expected: 'at most 32\u00a0MB' },
    });
    expect(readFileSync(path).equals(saved)).toBe(true);
  });

  test('A handle that nobody was given is refused everywhere', async () => {
    const { calls } = makeMachine();
    const handle = 'A'.repeat(32);
    const stale = { ok: false, problem: { code: 'stale-handle' } };
    expect(await calls.open({ handle })).toMatchObject(stale);
    expect(await calls.save({ handle, document: bareSheet('x'), expected: null })).toMatchObject(stale);
    expect(await calls.browse({ folder: handle })).toMatchObject(stale);
    expect(await calls.placeNew({ folder: handle, name: 'a.board.json', kind: 'board' })).toMatchObject(
      stale,
    );
  });
});

describe('Looking round in folders', () => {
  test('Folders come first, then files by number; what is hidden or of another kind is left out', async () => {
    const machine = makeMachine();
    const inHome = (name: string) => join(machine.home, name);
    for (const name of ['b10.json', 'b2.json', '.hidden.json', 'notes.txt', 'A.BOARD.JSON']) {
      writeFileSync(inHome(name), '{}');
    }
    for (const name of ['zebra', '.git', 'apple']) mkdirSync(inHome(name));
    symlinkSync(inHome('zebra'), inHome('link-to-zebra'));
    symlinkSync(inHome('gone'), inHome('leads-nowhere.json'));
    const { entries, crumbs, cut } = await browse(machine, null);
    expect(entries.map(({ name }) => name)).toEqual([
      'apple',
      'link-to-zebra',
      'zebra',
      'A.BOARD.JSON',
      'b2.json',
      'b10.json',
    ]);
    expect(entries.map(({ kind }) => kind)).toEqual(['folder', 'folder', 'folder', 'file', 'file', 'file']);
    expect(crumbs.at(-1)?.name).toBe(machine.home.split('/').at(-1));
    expect(cut).toBe(false);
  });

  test('Each crumb leads to its folder', async () => {
    const machine = makeMachine();
    mkdirSync(join(machine.home, 'inner'));
    const inner = (await browse(machine, null)).entries[0]?.handle ?? '';
    const { crumbs } = await browse(machine, inner);
    const above = await browse(machine, crumbs.at(-2)?.handle ?? '');
    expect(above.entries.map(({ name }) => name)).toEqual(['inner']);
  });

  test('The first folder shown is the one of the file last worked on', async () => {
    const machine = await withBoard();
    const other = scratchFolder();
    writeFileSync(join(other, 'x.board.json'), bareBoard('x'));
    await machine.calls.noteRecent({ handle: machine.host.handles.give(join(other, 'x.board.json')) });
    expect((await browse(machine, null)).entries.map(({ name }) => name)).toEqual(['x.board.json']);
  });

  test('A new name is placed in a folder that was shown, and one that is taken is said to be', async () => {
    const machine = await withBoard();
    const { handle: folder } = await browse(machine, null);
    const place = async (name: string) =>
      CHANNELS.placeNew.output.parse(await machine.calls.placeNew({ folder, name, kind: 'board' }));
    expect(await place('new.build.json')).toMatchObject({
      ok: true,
      value: { name: 'new.build.json', exists: false },
    });
    expect(await place('bare.board.json')).toMatchObject({ ok: true, value: { exists: true } });
  });

  test.each([
    '../up.json',
    'a/b.json',
    'a\\b.json',
    '..',
    '.bashrc.json',
    'run.sh',
    'a.json\u0000.txt',
    'CON.json',
    'lpt1.build.json',
    'C:a.json',
    'a.json::$DATA',
    `${'ä'.repeat(126)}.json`,
  ])('The name %j is refused', async (name) => {
    const machine = makeMachine();
    const { handle: folder } = await browse(machine, null);
    expect(await machine.calls.placeNew({ folder, name, kind: 'board' })).toMatchObject({
      problem: { code: 'bad-name' },
    });
  });
});

describe('Recent files', () => {
  test('The last one opened or saved comes first; one that is gone is marked; ten are kept', async () => {
    const machine = makeMachine();
    for (let number = 1; number <= 12; number++) {
      const path = join(machine.home, `${number}.board.json`);
      writeFileSync(path, bareBoard('x'));
      await machine.calls.noteRecent({ handle: machine.host.handles.give(path) });
    }
    rmSync(join(machine.home, '11.board.json'));
    const recent = CHANNELS.listRecent.output.parse(await machine.calls.listRecent());
    expect(recent.map(({ name }) => name.split('.')[0])).toEqual([
      '12',
      '11',
      '10',
      '9',
      '8',
      '7',
      '6',
      '5',
      '4',
      '3',
    ]);
    expect(recent.filter(({ missing }) => missing).map(({ name }) => name)).toEqual(['11.board.json']);
  });

  test('A file that was read is not among them before the page has found that it can be opened', async () => {
    const machine = await withBoard();
    await machine.calls.open({ handle: machine.handle });
    expect(await machine.calls.listRecent()).toEqual([]);
    await machine.calls.noteRecent({ handle: machine.handle });
    expect((await machine.calls.listRecent()).map(({ name }) => name)).toEqual(['bare.board.json']);
  });

  test('They are there at the next start, and can be forgotten one by one or all', async () => {
    const first = await withBoard();
    await first.calls.noteRecent({ handle: first.handle });
    const second = makeMachine({ like: first });
    const [recent] = await second.calls.listRecent();
    expect(recent?.name).toBe('bare.board.json');
    await second.calls.forgetRecent({ handle: recent?.handle ?? null });
    expect(await second.calls.listRecent()).toEqual([]);
    await second.calls.noteRecent({ handle: recent?.handle ?? '' });
    await second.calls.forgetRecent({ handle: null });
    expect(await second.calls.listRecent()).toEqual([]);
  });
});

describe('Settings', () => {
  const chosen = { theme: 'dark', largeType: true } as const;

  test('They are there at the next start', async () => {
    const first = makeMachine();
    expect(await first.calls.readSettings()).toEqual({ theme: 'system', largeType: false });
    await first.calls.writeSettings(chosen);
    expect(await makeMachine({ like: first }).calls.readSettings()).toEqual(chosen);
  });

  test.each(['{', 'null', '{"theme":"pink","largeType":true}', '{"theme":"dark","largeType":true,"more":1}'])(
    'A file that holds %s is set aside, and the program begins as new',
    async (content) => {
      const machine = makeMachine();
      await machine.calls.writeSettings(chosen);
      const path = join(machine.data, 'settings.json');
      writeFileSync(path, content);
      expect(await machine.calls.readSettings()).toEqual({ theme: 'system', largeType: false });
      expect(readFileSync(`${path}.broken`, 'utf8')).toBe(content);
    },
  );
});

test('Files named at the start are handed to the first page, and not to the same page loaded again', async () => {
  const first = await withBoard();
  const { calls } = makeMachine({ like: first, toOpen: [first.path] });
  const { toOpen } = CHANNELS.about.output.parse(await calls.about({ page: 'first-page-of-it' }));
  expect(await calls.open({ handle: toOpen[0] ?? '' })).toMatchObject({ ok: true });
  expect((await calls.about({ page: 'the-page-once-more' })).toOpen).toEqual([]);
});

describe('A call is refused before its handler sees it', () => {
  test.each(['', 'opem', 'about ', '__proto__', 'constructor', 'toString', 'hasOwnProperty'])(
    'on the channel %j, which does not exist',
    async (channel) => {
      const { calls } = makeMachine();
      expect(await receive(calls, channel, undefined)).toEqual({ ok: false, problem: 'unknown-channel' });
    },
  );

  const deep = JSON.parse(`${'['.repeat(100_000)}${']'.repeat(100_000)}`);
  const wrong: readonly unknown[] = [
    null,
    1,
    'x',
    [],
    deep,
    { handle: '/etc/passwd' },
    { folder: '..', extra: 1 },
  ];

  test.each(Object.keys(CHANNELS))(
    'on the channel %s, with what its schema does not allow',
    async (channel) => {
      const { calls } = makeMachine();
      for (const input of wrong) {
        expect(await receive(calls, channel, input)).toEqual({ ok: false, problem: 'bad-input' });
      }
    },
  );
});
