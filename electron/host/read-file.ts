import { basename } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import { LIMITS } from '../../boards/document/limits';
import type { ReadProblem } from '../../boards/host';
import { errnoOf } from './errno';
import type { FileFacts, FileSystem, OpenFile } from './file-system';
import { sha256, stampOf } from './stamp';

export interface ReadText {
  readonly text: string;
  readonly stamp: string;
}

/**
 * Reads a text file of at most `limitBytes`. The size is looked at before a byte is read, and again while
 * reading, for a file that grows. A byte order mark is left out; anything that is not UTF-8 is refused.
 */
export async function readTextFile(
  fs: FileSystem,
  path: string,
  limitBytes: number = LIMITS.fileBytes,
): Promise<Result<ReadText, ReadProblem>> {
  const name = basename(path);
  try {
    const file = await fs.openToRead(path);
    try {
      return await readOpened(file, name, limitBytes);
    } finally {
      await file.close();
    }
  } catch (thrown) {
    return refuse(readProblemOf(thrown, name));
  }
}

async function readOpened(
  file: OpenFile,
  name: string,
  limitBytes: number,
): Promise<Result<ReadText, ReadProblem>> {
  const facts = await file.facts();
  if (facts.kind !== 'file') return refuse({ code: notAFile(facts), name });
  if (facts.size > limitBytes)
    return refuse({ code: 'too-large', name, bytes: Number(facts.size), limitBytes });
  const bytes = await readUpTo(file, Number(facts.size), limitBytes);
  if (bytes === null) return refuse({ code: 'too-large', name, bytes: limitBytes + 1, limitBytes });
  const text = decode(bytes);
  return text === null
    ? refuse({ code: 'not-text', name })
    : ok({ text, stamp: stampOf(facts, sha256(bytes)) });
}

function notAFile(facts: FileFacts): 'folder' | 'special' {
  return facts.kind === 'folder' ? 'folder' : 'special';
}

/** All bytes to the end, or null where there are more than the limit. */
async function readUpTo(file: OpenFile, sizeHint: number, limitBytes: number): Promise<Uint8Array | null> {
  let buffer = new Uint8Array(sizeHint + 1);
  let length = 0;
  for (;;) {
    const count = await file.read(buffer.subarray(length));
    if (count === 0) return buffer.subarray(0, length);
    length += count;
    if (length > limitBytes) return null;
    if (length === buffer.length) {
      const wider = new Uint8Array(buffer.length * 2);
      wider.set(buffer);
      buffer = wider;
    }
  }
}

function decode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Names a failure of the system; a failure that is not the system's is a bug and is thrown on. */
export function readProblemOf(thrown: unknown, name: string): ReadProblem {
  const errno = errnoOf(thrown);
  switch (errno) {
    case null:
      throw thrown;
    case 'ENOENT':
    case 'ENOTDIR':
    case 'ENAMETOOLONG':
      return { code: 'not-found', name };
    case 'EACCES':
    case 'EPERM':
      return { code: 'no-permission', name };
    case 'EISDIR':
      return { code: 'folder', name };
    case 'ENXIO':
    case 'ELOOP':
      return { code: 'special', name };
    default:
      return { code: 'unreadable', name, detail: errno };
  }
}
