import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { FORMER, NEXT } from './documents';
import { fileWrongs, wordsWrongs } from './file-wrongs';
import { type Operation, saidBy } from './operation';
import { type Place, startAt } from './place';

const sheets = ({ data }: Place) => join(data, 'sheets');
const sheetOf = (place: Place) => join(sheets(place), 'panel.board.json');

/** A folder of the person's own. */
const chosen = ({ home }: Place) => join(home, 'my-sheets');

async function withFormer(place: Place): Promise<void> {
  mkdirSync(sheets(place), { recursive: true });
  writeFileSync(sheetOf(place), FORMER);
}

/** Where a text lies in the library, removed ones included. */
function placesOf(place: Place, text: string): readonly string[] {
  return [sheets(place), join(sheets(place), 'removed')].filter(existsSync).flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.json') && readFileSync(join(folder, name), 'utf8') === text)
      .map((name) => join(folder, name)),
  );
}

/** Every document in the library is whole. */
function wholeSheets(place: Place): readonly string[] {
  return [sheets(place), join(sheets(place), 'removed')].filter(existsSync).flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.json'))
      .filter((name) => ![FORMER, NEXT].includes(readFileSync(join(folder, name), 'utf8')))
      .map((name) => `${join(folder, name)} is not whole`),
  );
}

/** The library of sheets: keeping a new one, replacing one, removing one, another folder for it. */
export const LIBRARY: readonly Operation[] = [
  {
    name: 'keep a sheet',
    prepare: withFormer,
    run: async (place, fs) => {
      const { calls } = startAt(place, fs);
      return saidBy(
        await calls.keepSheet({
          document: JSON.parse(NEXT),
          place: { kind: 'new', name: 'next.board.json' },
        }),
      );
    },
    wrongs: async (place, said) => [
      ...fileWrongs(join(sheets(place), 'next.board.json'), null, NEXT, said),
      ...(placesOf(place, FORMER).length === 1 ? [] : ['Another sheet is gone']),
    ],
  },
  {
    name: 'replace a sheet, the former set aside',
    prepare: withFormer,
    run: async (place, fs) => {
      const { host, calls } = startAt(place, fs);
      const handle = host.handles.give(sheetOf(place));
      const over = { kind: 'over', handle, expected: null, setAside: true } as const;
      return saidBy(await calls.keepSheet({ document: JSON.parse(NEXT), place: over }));
    },
    wrongs: async (place, said) => [
      ...fileWrongs(sheetOf(place), FORMER, NEXT, said),
      ...wholeSheets(place),
      ...(placesOf(place, FORMER).length > 0 ? [] : ['The former sheet is nowhere']),
    ],
  },
  {
    name: 'remove a sheet',
    prepare: withFormer,
    run: async (place, fs) => {
      const { host, calls } = startAt(place, fs);
      return saidBy(await calls.removeSheet({ handle: host.handles.give(sheetOf(place)) }));
    },
    wrongs: async (place, said) => {
      const places = placesOf(place, FORMER);
      if (places.length !== 1) return [`The sheet lies in ${places.length} places`];
      const there = places[0] === sheetOf(place);
      if (said === null) return [];
      if (said.done === there)
        return [`It was said to be ${said.done ? 'removed' : 'in its place'}, and is not`];
      return wordsWrongs(sheetOf(place), said);
    },
  },
  {
    name: 'choose another folder for the library',
    prepare: async (place) => {
      await withFormer(place);
      mkdirSync(chosen(place));
    },
    run: async (place, fs) => {
      const { host, calls } = startAt(place, fs);
      const moved = await calls.moveLibrary({ folder: host.handles.give(chosen(place)) });
      // That it is done is not said: the window lists the library anew, and shows which folder it is.
      return moved.ok ? null : saidBy(moved);
    },
    wrongs: async (place, said) => {
      const { path } = await startAt(place).host.library.folder();
      const allowed = said === null ? [sheets, chosen] : [said.done ? chosen : sheets];
      // By the last name: after a power cut the same machine stands in another place.
      const isAllowed = allowed.some((of) => basename(of(place)) === basename(path));
      return [
        ...(isAllowed ? [] : [`The library is ${path}`]),
        ...(placesOf(place, FORMER).length === 1 ? [] : ['A sheet is gone']),
        ...(said === null ? [] : wordsWrongs(chosen(place), said)),
      ];
    },
  },
];
