import { z } from 'zod';
import { parseDocument } from '../../boards/document/parse';
import { serialize } from '../../boards/document/serialize';
import { SettingsZ } from '../../boards/host';
import { zigZag } from '../../boards/library/grids';
import { readHead } from '../../boards/pinout/photo/picture-head';
import { PICTURE_LIMITS } from '../../boards/pinout/photo/picture-problem';
import { withoutTags } from '../../boards/pinout/photo/without-tags';
import { readPinList } from '../../boards/pinout/pin-list/pin-list';
import { keptFile } from '../../electron/host/kept-file';
import { readTextFile } from '../../electron/host/read-file';
import { decodeCopy } from '../../electron/host/recovery-copy';
import { readCopied } from '../../renderer/areas/document/connector/pin-clipboard';
import {
  judgeCopiedRefusal,
  judgeListWords,
  judgeOpenRefusal,
  judgePhotoRefusal,
  judgeReadRefusal,
} from './judge-words';
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
    judgeReadRefusal(read.problem, NAME);
    return read.problem.code;
  }
  return judgeText(read.value.text, thorough);
}

function judgeText(text: string, thorough: boolean): string {
  const opened = parseDocument(text);
  if (!opened.ok) {
    judgeOpenRefusal(opened.problem, text, NAME);
    return opened.problem.code;
  }
  const saved = serialize(opened.value);
  const again = parseDocument(saved);
  if (!again.ok) throw new Error(`Saved and not opened again: ${JSON.stringify(again.problem)}`);
  if (serialize(again.value) !== saved) throw new Error('Saved, opened and saved, it is another file');
  if (thorough) workWith(opened.value);
  return 'opened';
}

function judgePhoto(bytes: Uint8Array): string {
  const head = readHead(bytes);
  if (!head.ok) {
    judgePhotoRefusal(head.problem, 'board.png');
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
  judgeListWords(read);
  return read.ok ? 'read' : read.problem.code;
}

function judgeCopiedPins(text: string): string {
  const read = readCopied(text);
  if (read.ok) return 'read';
  judgeCopiedRefusal(read.problem);
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
