import fc from 'fast-check';
import { BuildZ } from '../../boards/document/build';
import { serialize } from '../../boards/document/serialize';
import type { Input, Output } from '../../boards/host';
import { makeTurns } from '../../electron/host/turns';
import { closeBuild } from '../../renderer/files/leave-build';
import { openHandle } from '../../renderer/files/open-document';
import { saveBuild, saveBuildAs } from '../../renderer/files/save-build';
import { isUnsaved } from '../../renderer/store/editor';
import { bench, handleOf, wiredBuild } from '../renderer/stand-in';

const DEMO = wiredBuild();

/** What a person does while the disk is slow. */
const STEPS = ['edit', 'undo', 'save', 'save as', 'keep', 'open another', 'open again', 'close'] as const;
type Step = (typeof STEPS)[number];

const ANSWERS = ['save', 'discard', null];
const TOLD = 'a change outside was told that was our own';

/**
 * Autosave, saving, saving under another name, editing, undoing, closing and opening something else, the machine
 * doing what each call asks at any time after it, in any order, and answering at any time after that.
 *
 * @returns how many schedules were tried, and those after which something was lost or written over
 */
export async function race(schedules: number, seed: number): Promise<{ tried: number; failures: string[] }> {
  const failures: string[] = [];
  let tried = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.scheduler(),
      fc.array(fc.constantFrom(...STEPS), { minLength: 2, maxLength: 8 }),
      async (scheduler, steps) => {
        tried++;
        for (const wrong of await once(scheduler, steps))
          failures.push(`seed ${seed}: ${steps.join(', ')}: ${wrong}`);
      },
    ),
    { numRuns: schedules, seed },
  );
  return { tried, failures };
}

async function once(scheduler: fc.Scheduler, steps: readonly Step[]): Promise<readonly string[]> {
  const b = bench(DEMO);
  const wrongs: string[] = [];
  const answered = new Set<object>();
  const owners = new Map([[handleOf('demo'), ownerOf(b.build().name)]]);
  const disk = new Map<string, { text: string; stamp: string }>();
  let stamps = 0;
  disk.set(handleOf('demo'), { text: serialize(b.build()), stamp: 'stamp-0' });
  // A file is saved and opened in the order asked for, as the host has it; its copies come as they like.
  const turns = makeTurns();
  const lateInTurn = <In extends { handle: string }, Out>(work: (asked: In) => Promise<Out>) =>
    late(scheduler, work, ({ handle }, done) => turns.take(handle, done));
  const save = lateInTurn(async ({ handle, document, expected }: Input<'save'>): Promise<Output<'save'>> => {
    const there = disk.get(handle);
    if (expected !== null && there?.stamp !== expected)
      return { ok: false, problem: { code: 'changed-outside', name: handle } };
    const build = BuildZ.parse(document);
    if (owners.get(handle) !== ownerOf(build.name)) wrongs.push(`${handle} was written over`);
    const stamp = `stamp-${++stamps}`;
    disk.set(handle, { text: serialize(build), stamp });
    return { ok: true, value: { handle, name: handle, folder: '/bench', stamp, durable: true } };
  });
  const open = lateInTurn(async ({ handle }: Input<'open'>): Promise<Output<'open'>> => {
    const there = disk.get(handle);
    if (there === undefined) return { ok: false, problem: { code: 'not-found', name: handle } };
    return { ok: true, value: { handle, name: handle, folder: '/bench', ...there, readOnly: false } };
  });
  const copies = new Map<string, string>();
  const keep = late(scheduler, async ({ session, text }: Input<'keepRecovery'>) => {
    copies.set(session, serialize(JSON.parse(text)));
    return { ok: true, value: null } as const;
  });
  const drop = late(scheduler, async ({ id }: Input<'dropRecovery'>) => void copies.delete(id));
  let places = 0;
  const chooseSave = late(scheduler, async ({ suggested }: Input<'chooseSave'>) => {
    const handle = `new-place-${++places}`;
    owners.set(handle, ownerOf(suggested));
    return { handle, name: handle, exists: false };
  });
  Object.assign(b.host, { save, open, chooseSave, keepRecovery: keep, dropRecovery: drop });

  let [edits, opened, asked] = [0, 0, 0];
  let choice: string | null = null;
  /** What files are left with, by all that was shown of them. */
  const left = new Map<string, string>();
  b.editor.subscribe(({ open: now }, { open: then }) => {
    if (now?.opening === then?.opening) return;
    if (then && choice !== 'discard') {
      if (isUnsaved(then)) wrongs.push('an edit went, and nobody was asked');
      left.set(then.file.handle ?? '', serialize(then.history.present));
    }
    choice = null;
    left.delete(now?.file.handle ?? '');
  });
  b.session.subscribe(({ dialogs: [dialog] }) => {
    if (dialog === undefined || wrongs.includes(TOLD)) return;
    if (dialog.kind !== 'question' || !dialog.question.choices.some(({ id }) => id === 'discard')) {
      wrongs.push(TOLD);
      return;
    }
    // What to do with unsaved work: answered once, each time otherwise.
    if (answered.has(dialog)) return;
    answered.add(dialog);
    void scheduler.schedule(Promise.resolve(), 'answer').then(() => {
      choice = ANSWERS[asked++ % ANSWERS.length] ?? null;
      dialog.answer(choice);
    });
  });
  scheduler.scheduleSequence(
    steps.map((step) => async () => {
      switch (step) {
        case 'edit':
          if (b.editor.getState().open === null) break;
          b.run({ name: 'rename-build', args: { name: `${nameOf(b.build().name)} ${++edits}` } });
          break;
        case 'undo':
          b.editor.getState().undo();
          break;
        case 'save':
          void saveBuild(b);
          break;
        case 'save as':
          void saveBuildAs(b);
          break;
        case 'close':
          void closeBuild(b);
          break;
        case 'keep':
          void b.recovery.keepNow();
          break;
        case 'open another': {
          const name = `other${++opened}`;
          owners.set(handleOf(name), ownerOf(name));
          disk.set(handleOf(name), { text: serialize({ ...DEMO, name }), stamp: `stamp-${++stamps}` });
          void openHandle(b, handleOf(name));
          break;
        }
        case 'open again':
          void openHandle(b, b.editor.getState().open?.file.handle ?? handleOf('demo'));
      }
    }),
  );
  await settle(scheduler);
  // Whatever is unsaved is in a copy a moment later; what is saved is the file.
  void b.recovery.keepNow();
  await settle(scheduler);
  b.recovery.stop();

  for (const [handle, text] of left)
    if (disk.get(handle)?.text !== text) wrongs.push(`${handle} is not as it was left`);
  const { open: shown } = b.editor.getState();
  if (!shown) return copies.size === 0 ? wrongs : [...wrongs, 'a copy of work that was closed is left'];
  const text = serialize(shown.history.present);
  const isSafe = shown.saved === shown.history.present;
  if (isSafe && disk.get(shown.file.handle ?? '')?.text !== text)
    wrongs.push('it is said to be saved, and the file is another one');
  if (!isSafe && shown.history.past.length > 0 && ![...copies.values()].includes(text))
    wrongs.push('unsaved work is in no recovery copy');
  if (isSafe && copies.size > 0) wrongs.push('a copy of work that is saved is left');
  return wrongs;
}

/** The scheduler's own way delays only the answer of a call, and has its work done at once. */
function late<In, Out>(
  scheduler: fc.Scheduler,
  work: (asked: In) => Promise<Out>,
  turn: (asked: In, done: () => Promise<Out>) => Promise<Out> = (_, done) => done(),
) {
  return async (asked: In): Promise<Out> => {
    const answer = await turn(asked, async () => {
      await scheduler.schedule(Promise.resolve(), 'work');
      return work(asked);
    });
    await scheduler.schedule(Promise.resolve(), 'answer');
    return answer;
  };
}

/** Lets everything happen that was asked for, also what is only asked for once something else has happened. */
async function settle(scheduler: fc.Scheduler): Promise<void> {
  for (let quiet = 0; quiet < 2; quiet = scheduler.count() === 0 ? quiet + 1 : 0) {
    await scheduler.waitIdle();
    await new Promise((resolve) => setImmediate(resolve));
  }
}

/** The name without the number of its edit. */
function nameOf(name: string): string {
  return name.replace(/( \d+)+$/, '');
}

/** By whose file it is: a name, or the file name that is suggested for it, without the numbers of edits. */
function ownerOf(name: string): string {
  return nameOf(name.replace('.build.json', '').toLowerCase().replaceAll('-', ' '));
}
