import { describe, expect, test } from 'vitest';
import { serialize } from '../../../boards/document/serialize';
import type { HostApi } from '../../../boards/host';
import { mayLeave } from '../../../renderer/files/leave-build';
import { saveBuild, saveBuildAs, saveSheetAs } from '../../../renderer/files/save-build';
import { NoAnswer } from '../../../renderer/host/no-answer';
import { isUnsaved } from '../../../renderer/store/editor';
import { bench, handleOf, POWER_SWITCH, type TestBench, withHost, withSlowDisk } from '../stand-in';

const takeOff = { name: 'unseat-plug', args: POWER_SWITCH } as const;
const rename = (name: string) => ({ name: 'rename-build', args: { name } }) as const;

const fileOf = ({ editor }: TestBench) => editor.getState().open?.file;
const unsaved = ({ editor }: TestBench) => {
  const { open } = editor.getState();
  return open !== null && isUnsaved(open);
};

/** The question that is open once everything that can go on has gone on. */
async function question({ session }: TestBench) {
  await new Promise((resolve) => setTimeout(resolve));
  const dialog = session.getState().dialogs.at(-1);
  if (dialog?.kind !== 'question') throw new Error('No question is open');
  return dialog;
}

describe('A save that is not taken', () => {
  test('for want of room says that no recovery copy could be written either, where that is so', async () => {
    const b = bench();
    b.run(takeOff);
    const full = { code: 'no-space', name: 'demo', room: null } as const;
    b.host.refusal = full;
    b.host.keepRecovery = async () => ({ ok: false, problem: full });
    expect(await saveBuild(b)).toBe(false);
    expect(b.session.getState().dialogs.at(-1)).toMatchObject({
      message: {
        lines: [expect.any(String), 'Your work is still here; a recovery copy could not be written either.'],
      },
    });
  });

  test('for a bug is no matter of a program that has ended', async () => {
    const b = bench();
    b.run(takeOff);
    const save: HostApi['save'] = () => Promise.reject(new TypeError('A mistake of ours'));
    await expect(saveBuild(withHost(b, { save }))).rejects.toThrow('A mistake of ours');
    expect(b.session.getState().dialogs).toEqual([]);
  });

  test('for nobody answers is said, and leaves the work on the screen, unsaved', async () => {
    const b = bench();
    b.run(takeOff);
    const save: HostApi['save'] = () => Promise.reject(new NoAnswer('The program has ended'));
    expect(await saveBuild(withHost(b, { save }))).toBe(false);
    expect(unsaved(b)).toBe(true);
    expect(b.session.getState().dialogs.at(-1)).toMatchObject({
      message: {
        title: '“demo” was not saved',
        lines: ['The program behind this window does not answer.', expect.any(String)],
      },
    });
    expect(await saveBuild(b)).toBe(true);
  });
});

describe('Save as', () => {
  test('asks for a place under the build’s own name, and goes on in the new file', async () => {
    const b = bench();
    const asked: unknown[] = [];
    const chooseSave: HostApi['chooseSave'] = async (input) => {
      asked.push(input);
      return { handle: handleOf('elsewhere'), name: 'elsewhere', exists: false };
    };
    expect(await saveBuildAs(withHost(b, { chooseSave }))).toBe(true);
    expect(asked).toEqual([{ suggested: 'study-machine-3.build.json', kind: 'build' }]);
    expect(fileOf(b)).toMatchObject({ handle: handleOf('elsewhere'), stamp: 'stamp-1', readOnly: false });
    await saveBuild(b);
    expect(b.host.asked).toEqual([
      `save ${handleOf('elsewhere')} over null`,
      `save ${handleOf('elsewhere')} over stamp-1`,
    ]);
  });

  test('that is given up at the question where to, writes nothing', async () => {
    const b = bench();
    b.run(takeOff);
    expect(await saveBuildAs(withHost(b, { chooseSave: async () => null }))).toBe(false);
    expect([b.host.asked, unsaved(b), fileOf(b)?.handle]).toEqual([[], true, handleOf('demo')]);
  });

  test('is what Save does with a file that may not be written', async () => {
    const b = bench();
    const { open, load } = b.editor.getState();
    if (!open) throw new Error('Nothing is open');
    load(b.build(), { ...open.file, readOnly: true }, b.build());
    await saveBuild(b);
    expect(b.host.asked).toEqual([`save ${handleOf('study-machine-3.build.json')} over null`]);
  });
});

describe('Two saves at once', () => {
  test('go one after the other, the second over what the first wrote', async () => {
    const b = bench();
    expect(await Promise.all([saveBuild(b), saveBuild(b)])).toEqual([true, true]);
    expect(b.host.asked).toEqual([
      `save ${handleOf('demo')} over stamp-0`,
      `save ${handleOf('demo')} over stamp-1`,
    ]);
  });

  test('the second is not kept from it by a first that breaks off', async () => {
    const b = bench();
    const broken = saveBuild(
      withHost(b, { save: () => Promise.reject(new NoAnswer('The program has ended')) }),
    );
    const second = saveBuild(b);
    expect(await broken).toBe(false);
    expect(await second).toBe(true);
  });

  test('the second saves nothing when another build is open by then', async () => {
    const b = bench();
    const { slow, write } = withSlowDisk(b);
    const saves = [saveBuild(slow), saveBuild(b)];
    await new Promise((resolve) => setTimeout(resolve));
    const { file } = b.editor.getState().open ?? {};
    if (!file) throw new Error('Nothing is open');
    b.editor.getState().load(b.build(), { ...file, handle: handleOf('another') }, null);
    write();
    expect(await Promise.all(saves)).toEqual([true, false]);
    expect(b.host.asked).toEqual([`save ${handleOf('demo')} over stamp-0`]);
    expect([fileOf(b)?.handle, fileOf(b)?.stamp, unsaved(b)]).toEqual([handleOf('another'), 'stamp-0', true]);
  });

  test('nothing is saved when nothing is open any more, and none was', async () => {
    const b = bench();
    const saving = saveBuild(b);
    b.editor.getState().close();
    expect(await saving).toBe(false);
    expect(await saveBuild(b)).toBe(false);
    expect(b.host.asked).toEqual([]);
  });
});

describe('What is said of a save', () => {
  test('its name; and that the disk has not said yet that it has everything', async () => {
    const b = bench();
    await saveBuild(b);
    expect(b.said()).toBe('Saved handle-of-demo.');
    const save: HostApi['save'] = async (input) => {
      const saved = await b.host.save(input);
      return saved.ok ? { ok: true, value: { ...saved.value, durable: false } } : saved;
    };
    await saveBuild(withHost(b, { save }));
    expect(b.said()).toBe('Saved handle-of-demo. The disk has not said yet that it has everything.');
    expect(unsaved(b)).toBe(false);
  });
});

describe('A file that another program has changed', () => {
  async function refusedOnce(b: TestBench): Promise<{ saving: Promise<boolean> }> {
    b.run(takeOff);
    b.host.refusal = { code: 'changed-outside', name: 'demo' };
    const saving = saveBuild(b);
    await question(b);
    b.host.refusal = null;
    return { saving };
  }

  test('is asked about with what happened, what stays and both ways out', async () => {
    const b = bench();
    const { saving } = await refusedOnce(b);
    const { question: asked, answer } = await question(b);
    expect(asked.title).toBe('“demo” has changed on disk');
    expect(asked.lines).toEqual([
      'Another program has written it since it was opened here.',
      'Your work is still here, and a recovery copy is kept.',
      'Save under another name, or replace it.',
    ]);
    expect(asked.choices).toEqual([
      { id: 'save-as', label: 'Save under another name' },
      { id: 'replace', label: 'Replace it' },
    ]);
    answer(null);
    expect(await saving).toBe(false);
    expect([b.host.asked.length, unsaved(b), b.host.copies.size]).toEqual([1, true, 1]);
  });

  test('stays as it is when the work is saved under another name', async () => {
    const b = bench();
    const { saving } = await refusedOnce(b);
    (await question(b)).answer('save-as');
    expect(await saving).toBe(true);
    expect(b.host.asked[1]).toBe(`save ${handleOf('study-machine-3.build.json')} over null`);
    expect([b.host.files.has(handleOf('demo')), unsaved(b)]).toEqual([false, false]);
  });

  test('at the place that was chosen: that one is replaced, and not the file the work came from', async () => {
    const b = bench();
    b.host.refusal = { code: 'changed-outside', name: 'demo' };
    const saving = saveBuildAs(b);
    await question(b);
    b.host.refusal = null;
    (await question(b)).answer('replace');
    expect(await saving).toBe(true);
    const place = handleOf('study-machine-3.build.json');
    expect(b.host.asked).toEqual([`save ${place} over null`, `save ${place} over null`]);
  });
});

describe('A sheet of its own', () => {
  test.each(['board', 'case'] as const)('is saved as a %s, and where is said', async (kind) => {
    const b = bench();
    const asked: unknown[] = [];
    const chooseSave: HostApi['chooseSave'] = async (input) => {
      asked.push(input.kind);
      return { handle: 'a-sheet', name: 'a-sheet', exists: false };
    };
    const sheet = b.build()[kind];
    await saveSheetAs(withHost(b, { chooseSave }), sheet);
    expect(asked).toEqual([kind]);
    expect(b.host.files.get('a-sheet')?.text).toBe(serialize(sheet));
    expect(b.said()).toBe('Saved a-sheet in /bench.');
    expect(b.session.getState().dialogs).toEqual([]);
  });

  test('that is refused says why', async () => {
    const b = bench();
    b.host.refusal = { code: 'read-only-disk', name: 'a-sheet' };
    await saveSheetAs(b, b.build().board);
    expect(b.session.getState().dialogs).toMatchObject([
      { kind: 'message', message: { title: '“a-sheet” was not saved' } },
    ]);
    expect(b.said()).toBe('');
  });

  test('with no place chosen is not written', async () => {
    const b = bench();
    await saveSheetAs(withHost(b, { chooseSave: async () => null }), b.build().board);
    expect(b.host.asked).toEqual([]);
  });
});

describe('Leaving', () => {
  test('offers to save or not, and says what is lost', async () => {
    const b = bench();
    b.run(rename('Bench four'));
    const leaving = mayLeave(b);
    const { question: asked, answer } = await question(b);
    expect(asked).toEqual({
      title: 'Save the changes to “Bench four”?',
      lines: ['Without saving, the changes since the last save are lost.'],
      choices: [
        { id: 'save', label: 'Save' },
        { id: 'discard', label: 'Don’t save' },
      ],
    });
    answer('save');
    expect(await leaving).toBe(true);
  });

  test('is held up by a save that fails', async () => {
    const b = bench();
    b.run(takeOff);
    b.host.refusal = { code: 'no-permission', name: 'demo' };
    const leaving = mayLeave(b);
    (await question(b)).answer('save');
    expect(await leaving).toBe(false);
  });

  test('asks nothing where nothing is open', async () => {
    const b = bench();
    b.editor.getState().close();
    expect(await mayLeave(b)).toBe(true);
  });
});
