import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { CHANNELS, type FileKind } from '../../boards/host';
import { openNamed } from '../../electron/cli/check';
import { DISK } from '../../electron/host/file-system';
import { readTextFile } from '../../electron/host/read-file';
import { receive } from '../../electron/host/receive';
import { makeMachine } from '../electron/host/machine';
import { bareBoard, bareSheet, scratchFolder } from '../electron/scratch';
import { NO_FILES } from './no-files';
import { WAYS_OUT } from './ways-out';

const KINDS: readonly FileKind[] = ['build', 'board', 'pdf', 'csv'];

describe('a name for a new file', () => {
  it('has eighty ways to try', () => {
    expect(new Set(WAYS_OUT).size).toBeGreaterThanOrEqual(80);
  });

  it.each(WAYS_OUT.map((way) => [JSON.stringify(way.slice(0, 40)), way]))(
    '%s leads nowhere but into the folder that was chosen',
    async (_, way) => {
      const machine = makeMachine();
      const folder = join(machine.home, 'chosen');
      mkdirSync(folder);
      const handle = machine.host.handles.give(folder);
      const before = readdirSync(machine.home, { recursive: true });
      for (const kind of KINDS)
        for (const name of [way, `${way}.json`, `${way}.pdf`, `${way}.csv`]) {
          const answer = await receive(machine.calls, 'placeNew', { folder: handle, name, kind });
          // A name that is too long is refused with the call, as are those of no letters at all.
          expect(answer.ok).toBe(name.length <= 255);
          if (!answer.ok) continue;
          const placed = CHANNELS.placeNew.output.parse(answer.value);
          if (!placed.ok) {
            expect(placed.problem).toMatchObject({ code: 'bad-name' });
            continue;
          }
          const path = machine.host.handles.pathOf(placed.value.handle) ?? '';
          expect(dirname(path)).toBe(folder);
          expect(basename(path)).toBe(placed.value.name);
          expect(placed.value.name).not.toMatch(
            /[/\\:*?"<>|\p{Cc}]|^\.|^(?:con|prn|aux|nul|com\d|lpt\d)\s*\./iu,
          );
        }
      expect(readdirSync(machine.home, { recursive: true })).toEqual(before);
    },
  );

  it.each(WAYS_OUT.map((way) => [JSON.stringify(way.slice(0, 40)), way]))(
    '%s of a sheet leads nowhere but into the library',
    async (_, way) => {
      const machine = makeMachine();
      for (const name of [way, `${way}.json`]) {
        const place = { kind: 'new', name };
        const answer = await receive(machine.calls, 'keepSheet', { document: bareSheet('Bare'), place });
        expect(answer.ok).toBe(name.length <= 255);
        if (!answer.ok) continue;
        const kept = CHANNELS.keepSheet.output.parse(answer.value);
        if (!kept.ok) expect(kept.problem.code).toBe('bad-name');
        const sheets = join(machine.data, 'sheets');
        expect(existsSync(sheets) ? readdirSync(sheets) : []).toEqual(kept.ok ? [kept.value.name] : []);
        expect(existsSync(machine.data) ? readdirSync(machine.data) : []).toEqual(kept.ok ? ['sheets'] : []);
      }
      expect(readdirSync(machine.home)).toEqual([]);
    },
  );
});

describe.skipIf(process.platform === 'win32')('a link that lies in the folder', () => {
  const KEPT = 'as it was';
  /** A folder of somebody else with a file in it, and a link to each beside a link to nothing. */
  function linked(folder: string): { readonly outside: string; readonly file: string } {
    const outside = scratchFolder();
    const file = join(outside, 'theirs.json');
    writeFileSync(file, KEPT);
    for (const [name, to] of [
      ['file', file],
      ['folder', outside],
      ['nothing', join(outside, 'not-there.json')],
    ] as const)
      symlinkSync(to, join(folder, `${name}.board.json`));
    return { outside, file };
  }
  const NAMES = ['file.board.json', 'folder.board.json', 'nothing.board.json'];

  it('is told as taken under a new name, so that the person is asked, and is not written through unasked', async () => {
    const machine = makeMachine();
    const { outside } = linked(machine.home);
    const folder = machine.host.handles.give(machine.home);
    for (const name of NAMES) {
      const placed = await machine.calls.placeNew({ folder, name, kind: 'board' });
      expect(placed).toMatchObject({ ok: true, value: { name, exists: true } });
    }
    expect(readdirSync(outside)).toEqual(['theirs.json']);
  });

  it('gives way to a new sheet of the library, which gets another name', async () => {
    const machine = makeMachine();
    const library = join(machine.data, 'sheets');
    mkdirSync(library, { recursive: true });
    const { outside, file } = linked(library);
    for (const name of NAMES) {
      const kept = await machine.calls.keepSheet({
        document: bareSheet('Bare'),
        place: { kind: 'new', name },
      });
      expect(kept).toMatchObject({ ok: true, value: { name: name.replace('.board', '-2.board') } });
    }
    expect(readdirSync(outside)).toEqual(['theirs.json']);
    expect(readFileSync(file, 'utf8')).toBe(KEPT);
  });

  it('in the place of the folder for removed sheets takes no sheet elsewhere', async () => {
    const machine = makeMachine();
    const library = join(machine.data, 'sheets');
    const outside = scratchFolder();
    mkdirSync(library, { recursive: true });
    writeFileSync(join(library, 'bare.board.json'), bareBoard('Bare'));
    symlinkSync(outside, join(library, 'removed'));
    const listed = await machine.calls.listLibrary();
    const handle = listed.ok ? (listed.value.files[0]?.handle ?? '') : '';
    const removed = await machine.calls.removeSheet({ handle });
    const replaced = await machine.calls.keepSheet({
      document: bareSheet('Another'),
      place: { kind: 'over', handle, expected: null, setAside: true },
    });
    for (const each of [removed, replaced])
      expect(each).toMatchObject({ ok: false, problem: { code: 'special', name: 'removed' } });
    expect(readdirSync(outside)).toEqual([]);
    expect(readFileSync(join(library, 'bare.board.json'), 'utf8')).toBe(bareBoard('Bare'));
  });
});

describe.skipIf(process.platform === 'win32')('what is no ordinary file', () => {
  const outcome = async (path: string) => {
    const read = await readTextFile(DISK, path);
    return read.ok ? 'read' : read.problem.code;
  };

  it('is refused by what it is, four pipes and devices at once, and the file beside them is read', async () => {
    const folder = scratchFolder();
    const at = (name: string) => join(folder, name);
    for (const [name, { lay }] of Object.entries(NO_FILES)) {
      const remove = await lay(at(name));
      if (remove !== undefined) onTestFinished(remove);
    }
    for (const name of ['2', '3', '4']) await NO_FILES.pipe.lay(at(`pipe ${name}`));
    writeFileSync(at('a file'), '{}');
    const told = await Promise.all(readdirSync(folder).map(async (name) => [name, await outcome(at(name))]));
    const wanted = Object.entries(NO_FILES).map(([name, { problem }]) => [name, problem]);
    const pipes = ['2', '3', '4'].map((name) => [`pipe ${name}`, NO_FILES.pipe.problem]);
    expect(Object.fromEntries(told)).toEqual(Object.fromEntries([...wanted, ...pipes, ['a file', 'read']]));
  });

  it('and a link to a file of somebody else tells nothing of what stands in it', async () => {
    const link = join(scratchFolder(), 'secret.json');
    const secret = join(scratchFolder(), 'secret.txt');
    writeFileSync(secret, 'root:x:0:0:hunter2:/root:/bin/sh\n');
    symlinkSync(secret, link);
    const opened = await openNamed(link);
    expect(opened.ok).toBe(false);
    expect(JSON.stringify(opened)).not.toContain('hunter2');
  });

  it('and a listing of a folder full of them leaves them out', async () => {
    const machine = makeMachine();
    for (const name of ['1', '2', '3', '4', '5'])
      execFileSync('mkfifo', [join(machine.home, `${name}.build.json`)]);
    writeFileSync(join(machine.home, 'bare.board.json'), bareBoard('Bare'));
    const listing = await machine.calls.browse({ folder: null });
    if (!listing.ok) throw new Error(listing.problem.code);
    expect(listing.value.entries.map(({ name }) => name)).toEqual(['bare.board.json']);
  });
});
