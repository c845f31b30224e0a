import {
  existsSync,
  readdirSync,
  readFileSync,
  rmSync,
  statfsSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { BuildZ } from '../../../boards/document/build';
import { serialize } from '../../../boards/document/serialize';
import { saveProblemWords } from '../../../renderer/words/host-words';
import { largeBuild } from '../../boards/large-build';
import { BUILD } from './documents';
import { makePlace, startAt } from './place';

/** Three machines in one: of more than sixty pages, so that there are as many amounts of room too little for it. */
const LARGE = largeBuild(BuildZ.parse(JSON.parse(BUILD)), 3);
const FORMER = serialize(LARGE);
const NEXT = serialize({ ...LARGE, name: 'The next build' });
const NEXT_BYTES = Buffer.byteLength(NEXT, 'utf8');

/** The most that the advice may ask for beyond what is missing: pieces of the disk, and rounding both ways. */
const LOOSE_BYTES = 3 * 4_096 + 2_000;

/**
 * Saves on the disk below, of which only so many bytes are free, and once more when as much has been made free as
 * the message says.
 *
 * @returns whether there was too little room, and what did not hold
 */
export async function onFullDisk(
  below: string,
  freeBytes: number,
): Promise<{ readonly wasFull: boolean; readonly wrongs: readonly string[] }> {
  const place = makePlace(below);
  const filler = join(below, 'filler');
  const path = join(place.home, 'work.board.json');
  writeFileSync(path, FORMER);
  const { bavail, bsize } = statfsSync(below);
  writeFileSync(filler, new Uint8Array(Math.max(0, bavail * bsize - freeBytes)));
  const { host, calls } = startAt(place);
  const handle = host.handles.give(path);
  const save = async () => {
    const saved = await calls.save({ handle, document: JSON.parse(NEXT), expected: null });
    await host.versions.settled();
    return saved;
  };
  const wrongs: string[] = [];
  const first = await save();
  const now = readFileSync(path, 'utf8');
  if (first.ok ? now !== NEXT : now !== FORMER) wrongs.push(`${now.length} characters, said ${first.ok}`);
  if (first.ok) {
    if (freeBytes < NEXT_BYTES - 4_096) wrongs.push('there was no room, and it was saved');
    rmSync(filler);
  } else if (first.problem.code !== 'no-space') wrongs.push(`it is said to be ${first.problem.code}`);
  else {
    const { advice } = saveProblemWords(first.problem);
    const missingBytes = Number(/at least (\d+)\u00a0kB free/.exec(advice)?.[1]) * 1_000;
    if (!(missingBytes <= NEXT_BYTES - freeBytes + LOOSE_BYTES)) wrongs.push(`it is said: ${advice}`);
    truncateSync(filler, Math.max(0, statSync(filler).size - missingBytes));
  }
  const second = await save();
  if (!second.ok || readFileSync(path, 'utf8') !== NEXT)
    wrongs.push('it cannot be saved when there is the room that was asked for');
  rmSync(filler, { force: true });
  const left = readdirSync(place.home).filter((name) => name.endsWith('.tmp'));
  if (left.length > 0) wrongs.push(`left over: ${left.join(', ')}`);
  rmSync(join(place.home, '..'), { recursive: true });
  if (existsSync(place.home)) wrongs.push('the place is still there');
  return { wasFull: !first.ok, wrongs: wrongs.map((wrong) => `${freeBytes} bytes free: ${wrong}`) };
}
