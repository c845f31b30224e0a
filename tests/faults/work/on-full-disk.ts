import { existsSync, readdirSync, readFileSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sheetText } from './documents';
import { saidBy } from './operation';
import { makePlace, startAt } from './place';

const FORMER = sheetText('Former', 8_000);
const NEXT = sheetText('Next', 9_500);

/** Saves on the disk below, of which only so many bytes are free, and once more when there is room again. */
export async function onFullDisk(below: string, freeBytes: number): Promise<readonly string[]> {
  const place = makePlace(below);
  const filler = join(below, 'filler');
  const path = join(place.home, 'work.board.json');
  writeFileSync(path, FORMER);
  const { bavail, bsize } = statfsSync(below);
  writeFileSync(filler, new Uint8Array(Math.max(0, bavail * bsize - freeBytes)));
  const { host, calls } = startAt(place);
  const handle = host.handles.give(path);
  const save = async () => saidBy(await calls.save({ handle, text: NEXT, expected: null }));
  const wrongs: string[] = [];
  const first = await save();
  const now = readFileSync(path, 'utf8');
  if (first.done ? now !== NEXT : now !== FORMER) wrongs.push(`${now.length} characters, said ${first.done}`);
  if (!first.done && first.code !== 'no-space') wrongs.push(`it is said to be ${first.code}`);
  if (freeBytes < NEXT.length - 4_096 && first.done) wrongs.push('there was no room, and it was saved');
  rmSync(filler);
  const second = await save();
  if (!second.done || readFileSync(path, 'utf8') !== NEXT)
    wrongs.push('it cannot be saved when there is room');
  const left = readdirSync(place.home).filter((name) => name.endsWith('.tmp'));
  if (left.length > 0) wrongs.push(`left over: ${left.join(', ')}`);
  rmSync(join(place.home, '..'), { recursive: true });
  if (existsSync(place.home)) wrongs.push('the place is still there');
  return wrongs.map((wrong) => `${freeBytes} bytes free: ${wrong}`);
}
