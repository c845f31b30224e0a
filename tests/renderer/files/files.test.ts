import { describe, expect, test } from 'vitest';
import { serialize } from '../../../boards/document/serialize';
import type { HostApi } from '../../../boards/host';
import { freshId, idFrom, suggestedName } from '../../../renderer/files/file-name';
import { closeBuild, mayLeave } from '../../../renderer/files/leave-build';
import { openDropped, openHandle } from '../../../renderer/files/open-document';
import { openRecovered } from '../../../renderer/files/recovered';
import { saveBuild } from '../../../renderer/files/save-build';
import { isUnsaved } from '../../../renderer/store/editor';
import { bench, handleOf, POWER_SWITCH, type TestBench, withHost, withSlowDisk } from '../stand-in';

const takeOff = { name: 'unseat-plug', args: POWER_SWITCH } as const;

/** The topmost dialog, once it is there. */
async function dialog({ session }: TestBench) {
  await Promise.resolve();
  return session.getState().dialogs.at(-1);
}

async function answer(b: TestBench, choice: string | null): Promise<string> {
  const open = await dialog(b);
  if (open?.kind !== 'question') throw new Error('No question is open');
  open.answer(choice);
  return open.question.title;
}

const unsaved = ({ editor }: TestBench) => {
  const { open } = editor.getState();
  return open !== null && isUnsaved(open);
};

function onDisk(b: TestBench, name: string, text: string): string {
  const handle = handleOf(name);
  b.host.files.set(handle, { handle, name, folder: '/bench', text, stamp: 'stamp-9', readOnly: false });
  return handle;
}

describe('saving', () => {
  test('writes over the file as it was read, and the mark goes off', async () => {
    const b = bench();
    b.run(takeOff);
    expect(await saveBuild(b)).toBe(true);
    expect(b.host.asked).toEqual([`save ${handleOf('demo')} over stamp-0`]);
    expect(b.host.files.get(handleOf('demo'))?.text).toBe(serialize(b.build()));
    expect(unsaved(b)).toBe(false);
  });

  test('a second time expects what the first one wrote', async () => {
    const b = bench();
    await saveBuild(b);
    await saveBuild(b);
    expect(b.host.asked[1]).toBe(`save ${handleOf('demo')} over stamp-1`);
  });

  test('asks before it writes over what another program has changed', async () => {
    const b = bench();
    b.run(takeOff);
    b.host.refusal = { code: 'changed-outside', name: 'demo' };
    const saving = saveBuild(b);
    await Promise.resolve();
    await new Promise((resolve) => setTimeout(resolve));
    b.host.refusal = null;
    expect(await answer(b, 'replace')).toBe('“demo” has changed on disk');
    expect(await saving).toBe(true);
    expect(b.host.asked[1]).toBe(`save ${handleOf('demo')} over null`);
  });

  test('that fails says why, keeps the work and a recovery copy', async () => {
    const b = bench();
    b.run(takeOff);
    b.host.refusal = { code: 'no-space', name: 'demo', room: null };
    expect(await saveBuild(b)).toBe(false);
    expect(await dialog(b)).toMatchObject({ kind: 'message', message: { title: '“demo” was not saved' } });
    expect([unsaved(b), b.host.copies.size]).toEqual([true, 1]);
  });
});

describe('leaving unsaved work', () => {
  test('is asked about; stepping back keeps it', async () => {
    const b = bench();
    b.run(takeOff);
    const leaving = mayLeave(b);
    expect(await answer(b, null)).toContain('Save the changes');
    expect(await leaving).toBe(false);
    expect(unsaved(b)).toBe(true);
  });

  test('saves first when that is chosen', async () => {
    const b = bench();
    b.run(takeOff);
    const leaving = mayLeave(b);
    await answer(b, 'save');
    expect(await leaving).toBe(true);
    expect(b.host.asked).toHaveLength(1);
  });

  test('goes without saving when that is chosen, and the recovery copy goes too', async () => {
    const b = bench();
    b.run(takeOff);
    await b.recovery.keepNow();
    const closing = closeBuild(b);
    await answer(b, 'discard');
    await closing;
    expect([b.editor.getState().open, b.host.copies.size]).toEqual([null, 0]);
  });

  test('is asked about again where something was changed while it was being saved', async () => {
    const b = bench();
    b.run(takeOff);
    const save: HostApi['save'] = async (input) => {
      b.run({ name: 'rename-build', args: { name: 'Changed meanwhile' } });
      return b.host.save(input);
    };
    const leaving = mayLeave(withHost(b, { save }));
    await answer(b, 'save');
    await new Promise((resolve) => setTimeout(resolve));
    expect(await answer(b, null)).toBe('Save the changes to “Changed meanwhile”?');
    expect(await leaving).toBe(false);
    expect(b.host.asked).toHaveLength(1);
  });

  test('is not asked about when there is none', async () => {
    expect(await mayLeave(bench())).toBe(true);
  });
});

describe('opening', () => {
  test('a build puts it on the bench, saved', async () => {
    const b = bench();
    await openHandle(b, onDisk(b, 'other.build.json', serialize({ ...b.build(), name: 'Other' })));
    expect([b.build().name, unsaved(b)]).toEqual(['Other', false]);
    expect(b.host.asked).toEqual([`note ${handleOf('other.build.json')}`]);
  });

  test('another build begins with nothing of the last one in mind, and what was copied goes along', async () => {
    const b = bench();
    const { machine, ...session } = b.session.getState();
    const [header] = b.build().board.connectors;
    if (!header) throw new Error('No connector');
    session.keep(POWER_SWITCH, true);
    session.hideCables(['fan']);
    session.setMachine({ supply: 'running' });
    session.showStep('a step');
    session.showSuspect('memory');
    session.showTrial('other-memory');
    session.keepCopy(header);
    await openHandle(b, onDisk(b, 'other', serialize(b.build())));
    const { kept, hiddenCables, step, suspect, trial } = session;
    expect(b.session.getState()).toMatchObject({ kept, hiddenCables, step, suspect, trial, copied: header });
    expect(b.session.getState().machine).toEqual(machine);
  });

  test('a build that is opened while it is being saved shows what was saved', async () => {
    const b = bench();
    const before = b.editor.getState().open?.opening;
    const handle = onDisk(b, 'demo', serialize(b.build()));
    const { slow, write } = withSlowDisk(b);
    b.run(takeOff);
    const saved = b.build();
    const saving = saveBuild(slow);
    const opening = openHandle(b, handle);
    await new Promise((resolve) => setTimeout(resolve));
    expect(b.editor.getState().open?.opening).toBe(before);
    write();
    expect(await saving).toBe(true);
    await opening;
    const { open } = b.editor.getState();
    expect(open?.opening).not.toBe(before);
    expect([open?.history.present, open?.file.stamp, unsaved(b)]).toEqual([saved, 'stamp-1', false]);
  });

  // Seen by schedules: the file was left with what had been undone before it was closed, and nobody was asked.
  test('asks before it is closed, where what has been undone is just being saved', async () => {
    const b = bench();
    const { slow, write } = withSlowDisk(b);
    b.run(takeOff);
    const saving = saveBuild(slow);
    await new Promise((resolve) => setTimeout(resolve));
    b.editor.getState().undo();
    const closing = closeBuild(b);
    await new Promise((resolve) => setTimeout(resolve));
    expect(b.editor.getState().open).not.toBeNull();
    write();
    await saving;
    await new Promise((resolve) => setTimeout(resolve));
    expect(await answer(b, null)).toMatch(/^Save the changes to /);
    await closing;
    expect(unsaved(b)).toBe(true);
  });

  test('what cannot be opened says where and why, and the open work stays', async () => {
    const b = bench();
    const before = b.build();
    await openHandle(b, onDisk(b, 'bad.build.json', '{"format":"leadwright/build","version":1}'));
    expect(await dialog(b)).toMatchObject({
      kind: 'message',
      message: { title: expect.stringContaining('bad.build.json') },
    });
    expect(b.build()).toBe(before);
    expect(b.host.asked).toEqual([]);
  });

  test('what is no longer there says so', async () => {
    const b = bench();
    await openHandle(b, 'gone');
    expect(await dialog(b)).toMatchObject({ message: { title: '“gone” is not there' } });
  });

  test('a dropped file has no place on disk, so saving asks for one', async () => {
    const b = bench();
    await openDropped(b, new File([serialize({ ...b.build(), name: 'Dropped' })], 'dropped.build.json'));
    expect(b.editor.getState().open?.file.handle).toBeNull();
    expect(await saveBuild(b)).toBe(true);
    expect(b.editor.getState().open?.file.handle).toBe(handleOf('dropped.build.json'));
  });

  test('a board sheet is offered for this build or a new one', async () => {
    const b = bench();
    const opening = openHandle(
      b,
      onDisk(b, 'x.board.json', serialize({ ...b.build().board, name: 'Bench two' })),
    );
    await new Promise((resolve) => setTimeout(resolve));
    expect(await answer(b, 'here')).toBe('“Bench two” is a board sheet');
    await opening;
    expect(b.build().board.name).toBe('Bench two');
    expect(b.build().seats.length).toBeGreaterThan(0);
  });

  test('a recovery copy taken up again is saved against the stamp the work began from', async () => {
    const b = bench();
    b.host.copies.set('copy', {
      session: 'copy',
      page: 'page-that-broke-off',
      handle: handleOf('demo'),
      stamp: 'stamp-5',
      name: 'demo',
      text: serialize(b.build()),
      changes: 3,
    });
    await openRecovered(b, { id: 'copy', name: 'demo', folder: '/bench', savedMs: 0, changes: 3 });
    expect([unsaved(b), b.host.copies.size]).toEqual([true, 1]);
    await saveBuild(b);
    expect(b.host.asked).toEqual([`save ${handleOf('demo')} over stamp-5`]);
    expect([unsaved(b), b.host.copies.size]).toEqual([false, 0]);
  });
});

describe('names of files and ids', () => {
  test('come from the name a person gave', () => {
    expect(idFrom('Study machine 3', 'build')).toBe('study-machine-3');
    expect(idFrom('Größe & Maß', 'build')).toBe('gro-e-ma');
    expect(idFrom('…', 'build')).toBe('build');
    expect(suggestedName(bench().build())).toBe('study-machine-3.build.json');
  });

  test('are told apart by a number', () => {
    expect(freshId('Fan', 'lead', new Set(['fan', 'fan-2']))).toBe('fan-3');
    expect(freshId('x'.repeat(80), 'lead', new Set(['x'.repeat(64)])).length).toBeLessThanOrEqual(64);
  });
});
