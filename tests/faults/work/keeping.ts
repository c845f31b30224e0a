import { readdirSync, readFileSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import type { Settings } from '../../../boards/host';
import type { FileSystem } from '../../../electron/host/file-system';
import { keep, PAGE, SESSION } from '../../electron/host/unsaved-work';
import { FORMER, NEXT } from './documents';
import { type Operation, type Said, saidBy } from './operation';
import { type Place, startAt } from './place';

const BEFORE: Settings = { theme: 'light', largeType: false };
const AFTER: Settings = { theme: 'dark', largeType: true };

const FAILURE = { name: 'TypeError', message: '', stack: 'TypeError\n    at seatsOf (boards-x1.js:10:20)' };
const REPORT_END = '\n  at seatsOf (boards-x1.js:10:20)\n';

/** What is offered by a program started anew, the texts whole. */
export async function offered(place: Place): Promise<readonly string[]> {
  const { calls } = startAt(place);
  await calls.about({ page: PAGE });
  const texts: string[] = [];
  for (const { id } of await calls.listRecovery()) {
    const read = await calls.takeRecovery({ id, page: PAGE });
    texts.push(read.ok ? read.value.text : `unreadable: ${read.problem.code}`);
  }
  return texts;
}

/** Two copies of a session, of which the older must never come in place of the newer. */
async function keptTwice(place: Place): Promise<void> {
  const { calls } = startAt(place);
  await keep(calls, 'older still', 1);
  await keep(calls, FORMER, 2);
}

/** Takes up whatever is offered, and goes on with it. */
async function takenUp(place: Place, fs: FileSystem): Promise<Said> {
  const { calls } = startAt(place, fs);
  await calls.about({ page: PAGE });
  for (const { id } of await calls.listRecovery()) await calls.takeRecovery({ id, page: PAGE });
  return saidBy(await keep(calls, NEXT, 3));
}

/** The next copy is offered, or the former one as long as the next was not said to be kept. */
const nextOr =
  (former: string | null) =>
  async (place: Place, said: Said | null): Promise<readonly string[]> =>
    oneOf(await offered(place), said?.done ? [NEXT] : [NEXT, former]);

function oneOf(found: readonly string[], allowed: readonly (string | null)[]): readonly string[] {
  const [text = null] = found;
  if (found.length < 2 && allowed.includes(text)) return [];
  return [`Offered: ${found.map((each) => each.slice(0, 60)).join(' | ') || 'nothing'}`];
}

/** A program that was killed in the middle of a copy, by the older of its kind that cut files off. */
async function brokeOff(place: Place): Promise<void> {
  const { calls } = startAt(place);
  await keep(calls, FORMER, 1);
  await keep(calls, 'the copy that was cut off', 2);
  truncateSync(join(place.data, 'recovery', `${SESSION}.b.copy`), 300);
}

/** Trouble on top of trouble: the program is recovering from a crash when the disk fails too. */
export const RECOVERING: readonly Operation[] = [
  {
    name: 'be offered what a broken copy left',
    prepare: brokeOff,
    run: async (place, fs) => {
      const { calls } = startAt(place, fs);
      await calls.about({ page: PAGE });
      await calls.listRecovery();
      return null;
    },
    wrongs: async (place) => oneOf(await offered(place), [FORMER]),
  },
  {
    name: 'take up again what a broken copy left, and go on',
    prepare: brokeOff,
    run: takenUp,
    wrongs: nextOr(FORMER),
  },
];

/** What the program keeps for itself: copies of unsaved work, settings, the files worked on last. */
export const KEEPING: readonly Operation[] = [
  {
    name: 'first recovery copy',
    prepare: async () => undefined,
    run: async (place, fs) => saidBy(await keep(startAt(place, fs).calls, NEXT, 1)),
    wrongs: nextOr(null),
  },
  {
    name: 'next recovery copy',
    prepare: keptTwice,
    run: async (place, fs) => saidBy(await keep(startAt(place, fs).calls, NEXT, 3)),
    wrongs: nextOr(FORMER),
  },
  {
    name: 'take a recovery copy up again',
    prepare: keptTwice,
    run: takenUp,
    wrongs: nextOr(FORMER),
  },
  {
    name: 'drop a recovery copy',
    prepare: keptTwice,
    run: async (place, fs) => {
      await startAt(place, fs).calls.dropRecovery({ id: SESSION, page: PAGE });
      return null;
    },
    // One that could not be removed is offered once more, whole; an older one never takes its place.
    wrongs: async (place, said) => oneOf(await offered(place), said?.done ? [null] : [FORMER, null]),
  },
  {
    name: 'settings',
    prepare: async (place) => void (await startAt(place).calls.writeSettings(BEFORE)),
    run: async (place, fs) => {
      await startAt(place, fs).calls.writeSettings(AFTER);
      return null;
    },
    wrongs: async (place, said) => {
      const found = JSON.stringify(await startAt(place).calls.readSettings());
      return (said?.done ? [AFTER] : [BEFORE, AFTER]).some((one) => JSON.stringify(one) === found)
        ? []
        : [`The settings are ${found}`];
    },
  },
  {
    name: 'files worked on last',
    prepare: async (place) => {
      const { host, calls } = startAt(place);
      await calls.noteRecent({ handle: host.handles.give('/bench/a.build.json') });
    },
    run: async (place, fs) => {
      const { host, calls } = startAt(place, fs);
      await calls.noteRecent({ handle: host.handles.give('/bench/b.build.json') });
      return null;
    },
    wrongs: async (place, said) => {
      const found = (await startAt(place).calls.listRecent()).map(({ name }) => name).join(' ');
      const allowed = ['b.build.json a.build.json', ...(said?.done ? [] : ['a.build.json'])];
      return allowed.includes(found) ? [] : [`Worked on last: “${found}”`];
    },
  },
  {
    name: 'forget a file worked on last',
    prepare: async (place) => {
      const { host, calls } = startAt(place);
      for (const name of ['a', 'b'])
        await calls.noteRecent({ handle: host.handles.give(`/bench/${name}.build.json`) });
    },
    run: async (place, fs) => {
      const { host, calls } = startAt(place, fs);
      await calls.forgetRecent({ handle: host.handles.give('/bench/a.build.json') });
      return null;
    },
    wrongs: async (place, said) => {
      const found = (await startAt(place).calls.listRecent()).map(({ name }) => name).join(' ');
      const allowed = ['b.build.json', ...(said?.done ? [] : ['b.build.json a.build.json'])];
      return allowed.includes(found) ? [] : [`Worked on last: “${found}”`];
    },
  },
  {
    name: 'report a failure',
    prepare: async (place) => void (await startAt(place).calls.writeReport(FAILURE)),
    run: async (place, fs) => {
      const written = await startAt(place, fs).calls.writeReport(FAILURE);
      return saidBy(written);
    },
    wrongs: async (place, said) => {
      const folder = join(place.data, 'reports');
      const names = readdirSync(folder).filter((name) => name.endsWith('.txt'));
      const broken = names.filter((name) => !readFileSync(join(folder, name), 'utf8').endsWith(REPORT_END));
      const least = said?.done ? 2 : 1;
      return [
        ...broken.map((name) => `${name} is not whole`),
        ...(names.length < least ? [`There are ${names.length} reports`] : []),
        ...(said?.done === false && !said.name.startsWith('report-') ? [`It names “${said.name}”`] : []),
      ];
    },
  },
];
