import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { BuildZ } from '../../boards/document/build';
import { parseDocument } from '../../boards/document/parse';
import type { FileKind } from '../../boards/host';
import { openNamed } from '../../electron/cli/check';
import { DISK } from '../../electron/host/file-system';
import { readTextFile } from '../../electron/host/read-file';
import { inRoot } from '../../electron/start/place.mjs';
import { makeMachine } from '../electron/host/machine';
import { bareBoard, scratchFolder } from '../electron/scratch';
import { withEveryText } from './every-text';
import { memoryFile } from './memory-file';
import { NEVER_DONE } from './never-done';
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
          if (name === '' || name.length > 255) continue;
          const placed = await machine.calls.placeNew({ folder: handle, name, kind });
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
});

describe('what a document says', () => {
  it('is never taken for the name of a file: nothing but the document itself is read', async () => {
    const text = readFileSync(inRoot('tests', 'golden', 'version-1', 'everything.build.json'), 'utf8');
    for (const way of WAYS_OUT) {
      const named = withEveryText(BuildZ, JSON.parse(text), () => way);
      const disk = memoryFile(Buffer.from(JSON.stringify(named)));
      const read = await readTextFile(disk, '/home/a/desk.build.json');
      if (!read.ok) throw new Error(read.problem.code);
      const opened = parseDocument(read.value.text);
      if (!opened.ok) expect(opened.problem.code).toBe('invalid');
      expect(disk.asked).toEqual([]);
    }
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

describe('what the program does not do at all', () => {
  const sources = ['boards', 'electron', 'renderer'].flatMap((folder) =>
    readdirSync(inRoot(folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.(?:ts|tsx|mjs)$/.test(entry.name))
      .map((entry) => join(entry.parentPath, entry.name))
      .filter((path) => !path.includes(join('electron', 'start'))),
  );

  it.each(NEVER_DONE)('%s', (_, pattern) => {
    expect(sources.length).toBeGreaterThan(300);
    expect(sources.filter((path) => pattern.test(readFileSync(path, 'utf8')))).toEqual([]);
  });
});
