import { z } from 'zod';
import { parseDocument } from '../../boards/document/parse';
import type { OpenProblem } from '../../boards/document/problem/problem';
import { openProblemWords } from '../../boards/document/problem/problem-words';
import { serialize } from '../../boards/document/serialize';
import { SettingsZ } from '../../boards/host';
import { zigZag } from '../../boards/library/grids';
import { readHead } from '../../boards/pinout/photo/picture-head';
import { PICTURE_LIMITS } from '../../boards/pinout/photo/picture-problem';
import { pictureProblemWords } from '../../boards/pinout/photo/picture-words';
import { withoutTags } from '../../boards/pinout/photo/without-tags';
import { listProblemWords, listRefusalWords } from '../../boards/pinout/pin-list/list-words';
import { readPinList } from '../../boards/pinout/pin-list/pin-list';
import { readProblemWords } from '../../electron/cli/read-words';
import { keptFile } from '../../electron/host/kept-file';
import { readTextFile } from '../../electron/host/read-file';
import { decodeCopy } from '../../electron/host/recovery-copy';
import { readCopied } from '../../renderer/areas/document/connector/pin-clipboard';
import { memoryFile } from './memory-file';
import type { Kind } from './originals';
import { workWith } from './worked-with';

const NAME = 'desk.build.json';

/**
 * Reads a thing from outside as the program reads it, and says in a word what came of it.
 *
 * @param thorough also does with what was opened what the program does with a document
 * @throws where the program threw, or where its answer is not fit to be read by a person
 */
export async function judge(kind: Kind, bytes: Uint8Array, thorough: boolean): Promise<string> {
  switch (kind) {
    case 'build':
    case 'board':
    case 'case':
      return judgeDocument(bytes, thorough);
    case 'photo':
      return judgePhoto(bytes);
    case 'pin list':
      return judgePinList(new TextDecoder().decode(bytes));
    case 'copied pins':
      return judgeCopiedPins(new TextDecoder().decode(bytes));
    case 'recovery copy':
      return judgeRecoveryCopy(new TextDecoder().decode(bytes), thorough);
    case 'settings':
      return judgeKept(bytes, SettingsZ, { theme: 'system', largeType: false });
    case 'recent files':
      return judgeKept(bytes, z.array(z.string()), []);
  }
}

async function judgeDocument(bytes: Uint8Array, thorough: boolean): Promise<string> {
  const disk = memoryFile(bytes);
  const path = `/home/a/${NAME}`;
  const read = await readTextFile(disk, path);
  if ([...disk.paths].join() !== path) throw new Error(`It looked at ${[...disk.paths].join(', ')}`);
  if (disk.asked.length > 0) throw new Error(`Reading it asked the disk to ${disk.asked.join(', ')}`);
  if (!read.ok) {
    const { title, lines, advice } = readProblemWords(read.problem, NAME);
    needWords([title, ...lines, advice]);
    return read.problem.code;
  }
  return judgeText(read.value.text, thorough);
}

function judgeText(text: string, thorough: boolean): string {
  const opened = parseDocument(text);
  if (!opened.ok) {
    judgeRefusal(opened.problem, text);
    return opened.problem.code;
  }
  const saved = serialize(opened.value);
  const again = parseDocument(saved);
  if (!again.ok) throw new Error(`Saved and not opened again: ${JSON.stringify(again.problem)}`);
  if (serialize(again.value) !== saved) throw new Error('Saved, opened and saved, it is another file');
  if (thorough) workWith(opened.value);
  return 'opened';
}

/** Every refusal names the file, the place in it, and what was expected there. */
function judgeRefusal(problem: OpenProblem, text: string): void {
  const { title, lines, advice } = openProblemWords(problem, NAME);
  needWords([title, ...lines, advice]);
  if (!title.includes(NAME)) throw new Error(`The title does not name the file: ${title}`);
  if (problem.code === 'not-json') {
    const row = text.split('\n')[problem.line - 1];
    if (row === undefined || problem.column > row.length + 2)
      throw new Error(`Line ${problem.line}, column ${problem.column} is not in the file`);
    if (!/ was expected, and /.test(problem.detail))
      throw new Error(`Nothing was expected: ${problem.detail}`);
  }
  if (problem.code === 'invalid') {
    if (problem.fields.length === 0) throw new Error('Invalid, and no place is named');
    for (const { path, expected, found } of problem.fields)
      if (path === '' || expected === '' || found === '')
        throw new Error(`A place is not told: ${JSON.stringify({ path, expected, found })}`);
  }
}

/** Words for people: none empty, nothing in them that is not for the eye, nothing that a program says to itself. */
function needWords(words: readonly string[]): void {
  for (const each of words) {
    if (each.trim() === '') throw new Error('Words are missing');
    if (/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u.test(each))
      throw new Error(`Unseen letters in ${JSON.stringify(each)}`);
    if (/\[object |\bNaN\b(?!”)|\n\s+at /.test(each.replace(/“[^”]*”/g, '“”')))
      throw new Error(`A program’s own words in ${JSON.stringify(each)}`);
  }
}

function judgePhoto(bytes: Uint8Array): string {
  const head = readHead(bytes);
  if (!head.ok) {
    const { title, lines, advice } = pictureProblemWords(head.problem, 'board.png');
    needWords([title, ...lines, advice]);
    if (!title.includes('board.png')) throw new Error(`The title does not name the file: ${title}`);
    return head.problem.code;
  }
  const { widthPx, heightPx, type } = head.value;
  const { pixels, sidePx, leastSidePx } = PICTURE_LIMITS;
  if (!(widthPx * heightPx <= pixels && widthPx <= sidePx && heightPx <= sidePx))
    throw new Error(`It would be decoded at ${widthPx} × ${heightPx}`);
  if (!(Math.min(widthPx, heightPx) >= leastSidePx)) throw new Error(`${widthPx} × ${heightPx} is taken`);
  if (type === 'image/jpeg') withoutTags(bytes);
  return 'taken';
}

const GRID = zigZag(5);

function judgePinList(text: string): string {
  const read = readPinList(text, { grid: GRID });
  if (!read.ok) {
    const { title, advice } = listRefusalWords(read.problem);
    needWords([advice]);
    if (title.length < 10) throw new Error(`A refusal without words: ${title}`);
    return read.problem.code;
  }
  for (const problem of read.value.problems)
    if (listProblemWords(problem).title.length < 10) throw new Error(`No words for ${problem.code}`);
  return 'read';
}

function judgeCopiedPins(text: string): string {
  const read = readCopied(text);
  if (read.ok) return 'read';
  needWords([read.problem]);
  return 'refused';
}

function judgeRecoveryCopy(content: string, thorough: boolean): string {
  const copy = decodeCopy(content);
  if (copy === 'newer' || copy === 'broken') return copy;
  judgeText(copy.text, thorough);
  return 'whole';
}

/** A file of our own that was damaged never keeps the program from starting. */
async function judgeKept<T>(bytes: Uint8Array, schema: z.ZodType<T>, fallback: T): Promise<string> {
  const disk = memoryFile(bytes);
  const value = await keptFile(disk, '/data/kept.json', schema, fallback).read();
  if (!schema.safeParse(value).success) throw new Error(`It was read as ${JSON.stringify(value)}`);
  return disk.asked.includes('rename') ? 'set aside' : 'kept';
}
