import fc from 'fast-check';
import { serialize } from '../../boards/document/serialize';
import type { Input, Output } from '../../boards/host';
import { makeTurns } from '../../electron/host/turns';
import { saveBuild } from '../../renderer/files/save-build';
import { bench, handleOf, wiredBuild } from '../renderer/stand-in';

const DEMO = wiredBuild();

/** What a person does while the disk is slow. */
const STEPS = ['edit', 'undo', 'save', 'keep', 'open another', 'reload'] as const;
type Step = (typeof STEPS)[number];

/**
 * Autosave, saving, editing, undoing and opening something else, the machine doing what each call asks at any
 * time after it, in any order, and answering at any time after that.
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
        for (const wrong of await once(scheduler, steps)) failures.push(`${steps.join(', ')}: ${wrong}`);
      },
    ),
    { numRuns: schedules, seed },
  );
  return { tried, failures };
}

async function once(scheduler: fc.Scheduler, steps: readonly Step[]): Promise<readonly string[]> {
  const b = bench(DEMO);
  const wrongs: string[] = [];
  const owners = new Map([[handleOf('demo'), nameOf(b.build().name)]]);
  const disk = new Map<string, { text: string; stamp: string }>();
  let stamps = 0;
  disk.set(handleOf('demo'), { text: serialize(b.build()), stamp: 'stamp-0' });
  // A file is saved and opened in the order asked for, as the host has it; its copies come as they like.
  const turns = makeTurns();
  const lateInTurn = <In extends { handle: string }, Out>(work: (asked: In) => Promise<Out>) =>
    late(scheduler, work, ({ handle }, done) => turns.take(handle, done));
  const save = lateInTurn(async ({ handle, text, expected }: Input<'save'>): Promise<Output<'save'>> => {
    const there = disk.get(handle);
    if (expected !== null && there?.stamp !== expected)
      return { ok: false, problem: { code: 'changed-outside', name: handle } };
    if (owners.get(handle) !== nameOf(JSON.parse(text).name)) wrongs.push(`${handle} was written over`);
    const stamp = `stamp-${++stamps}`;
    disk.set(handle, { text, stamp });
    return { ok: true, value: { handle, name: handle, folder: '/bench', stamp, durable: true } };
  });
  const read = lateInTurn(async ({ handle }: Input<'open'>) => disk.get(handle) ?? { text: '', stamp: '' });
  const copies = new Map<string, string>();
  const keep = late(scheduler, async ({ session, text }: Input<'keepRecovery'>) => {
    copies.set(session, text);
    return { ok: true, value: null } as const;
  });
  const drop = late(scheduler, async ({ id }: Input<'dropRecovery'>) => void copies.delete(id));
  Object.assign(b.host, { save, keepRecovery: keep, dropRecovery: drop });

  let edits = 0;
  let opened = 0;
  scheduler.scheduleSequence(
    steps.map((step) => async () => {
      switch (step) {
        case 'edit':
          b.run({ name: 'rename-build', args: { name: `${nameOf(b.build().name)} ${++edits}` } });
          break;
        case 'undo':
          b.editor.getState().undo();
          break;
        case 'save':
          void saveBuild(b);
          break;
        case 'keep':
          void b.recovery.keepNow();
          break;
        case 'open another':
        case 'reload': {
          const name = step === 'reload' ? 'demo' : `other${++opened}`;
          const handle = handleOf(name);
          const own = step === 'reload' ? nameOf(DEMO.name) : name;
          owners.set(handle, own);
          const build = { ...DEMO, name: own };
          if (!disk.has(handle)) disk.set(handle, { text: serialize(build), stamp: `stamp-${++stamps}` });
          const { text, stamp } = await read({ handle });
          b.recovery.begin();
          const shown = { ...build, name: JSON.parse(text).name };
          b.editor.getState().load(shown, { handle, name, folder: '/bench', stamp, readOnly: false }, shown);
        }
      }
    }),
  );
  await settle(scheduler);
  // Whatever is unsaved is in a copy a moment later; what is saved is the file.
  void b.recovery.keepNow();
  await settle(scheduler);
  b.recovery.stop();

  const { open } = b.editor.getState();
  if (!open) return [...wrongs, 'nothing is open'];
  const text = serialize(open.history.present);
  const isSafe = open.saved === open.history.present;
  if (b.session.getState().dialogs.length > 0) wrongs.push('a change outside was told that was our own');
  if (isSafe && disk.get(open.file.handle ?? '')?.text !== text)
    wrongs.push('it is said to be saved, and the file is another one');
  if (!isSafe && open.history.past.length > 0 && ![...copies.values()].includes(text))
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
    await scheduler.waitAll();
    await new Promise((resolve) => setImmediate(resolve));
  }
}

/** The name without the number of its edit. */
function nameOf(name: string): string {
  return name.replace(/( \d+)+$/, '');
}
