import { LIMITS } from '../../boards/document/limits';
import { openProblemWords } from '../../boards/document/problem/problem-words';
import { serialize } from '../../boards/document/serialize';
import type { SaveProblem, SheetPlace } from '../../boards/host';
import { askQuestion } from '../store/ask';
import type { Message } from '../store/dialog';
import { readProblemWords, saveProblemWords } from '../words/host-words';
import type { Workbench } from '../workbench';
import { freshId, suggestedName } from './file-name';
import { chooseFile, readHandle } from './open-document';
import { idsIn, type ReadLibrary, twinIn } from './read-library';
import { readDocument } from './reading/read-document';
import { kindOfSheet, type Sheet, sheetWords } from './sheet';

/** A sheet of the library as it was read, and the file it was read from. */
export interface OpenedSheet {
  readonly handle: string;
  readonly sheet: Sheet;
  readonly stamp: string;
}

/** A sheet of the library in full; null where it cannot be read any more, which is shown. */
export async function openSheet(workbench: Workbench, handle: string): Promise<OpenedSheet | null> {
  const read = await workbench.host.open({ handle });
  if (!read.ok) return shown(workbench, readProblemWords(read.problem));
  const parsed = await readDocument(read.value.text);
  if (!parsed.ok) return shown(workbench, openProblemWords(parsed.problem, read.value.name));
  if (parsed.value.format === 'leadwright/build') return null;
  return { handle, sheet: parsed.value, stamp: read.value.stamp };
}

function shown(workbench: Workbench, message: Message): null {
  workbench.session.getState().openDialog({ kind: 'message', message });
  return null;
}

/** Why the library did not take a sheet: the machine's words, and that the library is as it was. */
function refusedByLibrary(workbench: Workbench, problem: SaveProblem): null {
  const { title, lines, advice } = saveProblemWords(problem);
  return shown(workbench, { title, lines: [...lines.slice(0, 1), 'The library is as it was.'], advice });
}

async function write(workbench: Workbench, sheet: Sheet, place: SheetPlace): Promise<string | null> {
  const kept = await workbench.host.keepSheet({ document: sheet, place });
  return kept.ok ? kept.value.handle : refusedByLibrary(workbench, kept.problem);
}

/**
 * Keeps a sheet in the library. Where one with the same id is there, the person says what becomes of the
 * two: both are kept, the former goes to the removed ones, or they are compared first.
 *
 * @returns the handle of the kept sheet; null when nothing was kept
 */
export async function keepSheet(
  workbench: Workbench,
  library: ReadLibrary,
  sheet: Sheet,
): Promise<string | null> {
  const kind = kindOfSheet(sheet);
  const twin = twinIn(library, kind, sheet.id);
  if (twin === undefined) return keepAsNew(workbench, sheet);
  const there = await openSheet(workbench, twin.handle);
  if (there !== null && serialize(there.sheet) === serialize(sheet)) {
    workbench.session.getState().tell(`“${sheet.name}” is in the library already, word for word.`);
    return twin.handle;
  }
  const choice = await askQuestion(workbench.session, {
    title: `The library has a ${sheetWords(kind)} “${sheet.id}” already`,
    lines: [
      `It is called “${twin.head.title}” and lies in ${twin.name}. Two sheets of one id are two states of the same ${kind}.`,
      'Keep both, and the new one gets an id of its own. Replace it, and the former goes to the folder “removed”.',
    ],
    choices: [
      { id: 'both', label: 'Keep both' },
      { id: 'replace', label: 'Replace it' },
      { id: 'compare', label: 'Compare them' },
    ],
  });
  if (choice === 'both')
    return keepAsNew(workbench, { ...sheet, id: freshId(sheet.id, kind, idsIn(library, kind)) });
  if (choice === 'replace') {
    const place = { kind: 'over', handle: twin.handle, expected: null, setAside: true } as const;
    return told(
      workbench,
      await write(workbench, sheet, place),
      `Kept “${sheet.name}” in place of the former.`,
    );
  }
  if (choice === 'compare' && there !== null)
    workbench.session.getState().openDialog({ kind: 'compare', mine: sheet, theirs: there.sheet });
  return null;
}

async function keepAsNew(workbench: Workbench, sheet: Sheet): Promise<string | null> {
  const handle = await write(workbench, sheet, { kind: 'new', name: suggestedName(sheet) });
  return told(workbench, handle, `Kept “${sheet.name}” in the library.`);
}

function told(workbench: Workbench, handle: string | null, words: string): string | null {
  if (handle !== null) workbench.session.getState().tell(words);
  return handle;
}

/** Copies a file of the person's choosing into the library. */
export async function importSheet(workbench: Workbench, library: ReadLibrary): Promise<string | null> {
  const chosen = await chooseFile(workbench);
  const read = chosen === null ? null : await readHandle(workbench, chosen);
  if (read === null) return null;
  if (read.document.format !== 'leadwright/build') return keepSheet(workbench, library, read.document);
  return shown(workbench, {
    title: `“${read.file.name}” is a build`,
    lines: ['The library holds board sheets and case sheets.'],
    advice: 'Open the build with File, Open, and keep its board or its case from there.',
  });
}

/** A second sheet like the first, with an id and a name of its own. */
export async function duplicateSheet(
  workbench: Workbench,
  library: ReadLibrary,
  { sheet }: OpenedSheet,
): Promise<string | null> {
  const kind = kindOfSheet(sheet);
  const name = `${sheet.name.slice(0, LIMITS.textLength - 6)}, copy`;
  return keepAsNew(workbench, {
    ...sheet,
    name,
    id: freshId(`${sheet.id}-copy`, kind, idsIn(library, kind)),
  });
}

/** Calls a sheet of the library otherwise. The file keeps its name. */
export async function renameSheet(
  workbench: Workbench,
  { handle, sheet, stamp }: OpenedSheet,
  name: string,
): Promise<string | null> {
  const place = { kind: 'over', handle, expected: stamp, setAside: false } as const;
  return told(workbench, await write(workbench, { ...sheet, name }, place), `Renamed to “${name}”.`);
}

/** Moves a sheet to the removed ones, after asking. */
export async function removeSheet(workbench: Workbench, { handle, sheet }: OpenedSheet): Promise<boolean> {
  const choice = await askQuestion(workbench.session, {
    title: `Remove “${sheet.name}” from the library?`,
    lines: ['Its file goes to the folder “removed” of the library, and can be imported again from there.'],
    choices: [{ id: 'remove', label: 'Remove' }],
  });
  if (choice !== 'remove') return false;
  const removed = await workbench.host.removeSheet({ handle });
  if (!removed.ok) {
    refusedByLibrary(workbench, removed.problem);
    return false;
  }
  workbench.session.getState().tell(`Moved ${removed.value.name} to ${removed.value.folder}.`);
  return true;
}

/** Writes a sheet of the library anew after something was taken over; the former goes to the removed ones. */
export async function keepMerged(workbench: Workbench, handle: string, sheet: Sheet): Promise<boolean> {
  const written = await write(workbench, sheet, { kind: 'over', handle, expected: null, setAside: true });
  const words = `Kept “${sheet.name}” with what was taken over. The former is among the removed.`;
  return told(workbench, written, words) !== null;
}
