import { join } from 'node:path';
import { parseDocument } from '../../../boards/document/parse';
import { keep, PAGE, SESSION } from '../../electron/host/unsaved-work';
import { sheetText } from './documents';
import { offered } from './keeping';
import { type Place, startAt } from './place';

const fileOf = ({ home }: Place) => join(home, 'work.board.json');
/** Of so many edits, each of which is kept as unsaved work, the last is saved. */
const EDITS_A_SAVE = 4;

/** The numbers of the edits that the robot was last told of: kept as unsaved work, and saved. */
export interface Told {
  readonly kept: number;
  readonly saved: number;
}

/**
 * Edits without a pause, has each edit kept as unsaved work, saves after a few of them and drops the copy then, as
 * the window does it. Tells the number of every edit that was confirmed to be kept or saved.
 */
export async function workWithoutPause(place: Place): Promise<never> {
  const { host, calls } = startAt(place);
  await calls.about({ page: PAGE });
  const handle = host.handles.give(fileOf(place));
  for (let number = 1; ; number++) {
    const text = sheetText(`Edit ${number}`);
    if ((await keep(calls, text, number)).ok) process.stdout.write(`kept ${number}\n`);
    if (number % EDITS_A_SAVE !== 0) continue;
    const saved = await calls.save({ handle, document: JSON.parse(text), expected: null });
    if (!saved.ok) continue;
    process.stdout.write(`saved ${number}\n`);
    await calls.dropRecovery({ id: SESSION, page: PAGE });
  }
}

/** The newest of what the robot has told in lines; 0 for what it has told nothing of. */
export function toldIn(lines: string): Told {
  const last = (what: string) => Number(lines.match(new RegExp(`(?<=^${what} )\\d+$`, 'gm'))?.at(-1) ?? 0);
  return { kept: last('kept'), saved: last('saved') };
}

/** What does not hold of what the robot left, as a program started anew finds it. */
export async function robotWrongs(place: Place, told: Told): Promise<readonly string[]> {
  const { host, calls } = startAt(place);
  const opened = await calls.open({ handle: host.handles.give(fileOf(place)) });
  const saved = opened.ok ? numberIn(opened.value.text) : null;
  const copies = await offered(place);
  const numbers = copies.map(numberIn);
  const newest = Math.max(saved ?? 0, ...numbers.map((number) => number ?? 0));
  const said = `told ${told.saved} saved and ${told.kept} kept`;
  return [
    ...(told.saved > 0 && (saved === null || saved < told.saved)
      ? [`${said}, and the file holds ${saved ?? 'nothing whole'}`]
      : []),
    ...(numbers.includes(null) ? [`${said}, and a copy that is not whole is offered`] : []),
    ...(copies.length > 1 ? [`${said}, and ${copies.length} copies are offered`] : []),
    ...(newest < Math.max(told.saved, told.kept) ? [`${said}, and the newest there is is ${newest}`] : []),
  ];
}

/** The number of the edit that a text is of; null where it is not whole. */
function numberIn(text: string): number | null {
  const parsed = parseDocument(text);
  return parsed.ok ? Number(parsed.value.name.replace('Edit ', '')) : null;
}
