import { lstatSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from '../../../boards/document/parse';
import { fromToCsv } from '../../../boards/handover/from-to-csv';
import { BUILD, FORMER, NEXT } from './documents';
import { fileWrongs } from './file-wrongs';
import { type Operation, saidBy } from './operation';
import { type Place, startAt } from './place';

const fileOf = ({ home }: Place) => join(home, 'work.board.json');
const elsewhere = ({ home }: Place) => join(home, 'elsewhere.json');
const listOf = ({ home }: Place) => join(home, 'leads.csv');

/** Saving a document over the one that was opened, as a new file and through a link; and giving out a list. */
export const SAVING: readonly Operation[] = [
  {
    name: 'save',
    prepare: async (place) => writeFileSync(fileOf(place), FORMER),
    run: async (place, fs) => {
      const { host, calls } = startAt(place, fs);
      const handle = host.handles.give(fileOf(place));
      const opened = await calls.open({ handle });
      if (!opened.ok) return saidBy(opened);
      const saved = await calls.save({ handle, document: JSON.parse(NEXT), expected: opened.value.stamp });
      await host.versions.settled();
      return saidBy(saved);
    },
    wrongs: async (place, said) => [
      ...fileWrongs(fileOf(place), FORMER, NEXT, said),
      ...(await versionWrongs(place)),
    ],
  },
  {
    name: 'save as',
    prepare: async () => undefined,
    run: async (place, fs) => {
      const { host, calls } = startAt(place, fs);
      const handle = host.handles.give(fileOf(place));
      const saved = await calls.save({ handle, document: JSON.parse(NEXT), expected: null });
      await host.versions.settled();
      return saidBy(saved);
    },
    wrongs: async (place, said) => fileWrongs(fileOf(place), null, NEXT, said),
  },
  {
    name: 'save through a link',
    prepare: async (place) => {
      writeFileSync(elsewhere(place), FORMER);
      symlinkSync('elsewhere.json', fileOf(place));
    },
    run: async (place, fs) => {
      const { host, calls } = startAt(place, fs);
      const handle = host.handles.give(fileOf(place));
      const saved = await calls.save({ handle, document: JSON.parse(NEXT), expected: null });
      await host.versions.settled();
      return saidBy(saved);
    },
    wrongs: async (place, said) => [
      ...fileWrongs(fileOf(place), FORMER, NEXT, said),
      ...(lstatSync(fileOf(place)).isSymbolicLink() ? [] : ['The link is no longer one']),
    ],
  },
  {
    name: 'export',
    prepare: async (place) => writeFileSync(listOf(place), FORMER),
    run: async (place, fs) => {
      const { host, calls } = startAt(place, fs);
      return saidBy(
        await calls.saveList({ handle: host.handles.give(listOf(place)), build: BUILD, list: 'from-to' }),
      );
    },
    wrongs: async (place, said) => fileWrongs(listOf(place), FORMER, listText(), said),
  },
];

/** What is listed as an earlier version and opens is one, whole. */
async function versionWrongs(place: Place): Promise<readonly string[]> {
  const { host, calls } = startAt(place);
  const handle = host.handles.give(fileOf(place));
  const wrongs: string[] = [];
  for (const { id } of await calls.listVersions({ handle })) {
    const read = await calls.readVersion({ handle, id });
    if (read.ok && ![FORMER, NEXT].includes(read.value.text)) wrongs.push(`The version ${id} is not whole`);
  }
  return wrongs;
}

let made: string | null = null;

function listText(): string {
  if (made !== null) return made;
  const parsed = parseDocument(BUILD);
  if (!parsed.ok || parsed.value.format !== 'leadwright/build') throw new Error('The demo does not open');
  made = fromToCsv(parsed.value);
  return made;
}
