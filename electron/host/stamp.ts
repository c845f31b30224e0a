import { createHash } from 'node:crypto';
import type { FileFacts } from './file-system';

/** SHA-256 of some bytes, in hexadecimal digits. */
export function sha256(bytes: Uint8Array | string): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** A file as it was when last read or written: size, time, place on the disk, and content. */
export function stampOf(facts: FileFacts, contentHash: string): string {
  return `${facts.size}-${facts.mtimeNs}-${facts.ino}-${contentHash}`;
}

/** Whether the file's outside is as the stamp has it. Then its content need not be read. */
export function looksUntouched(stamp: string, facts: FileFacts): boolean {
  return stamp.startsWith(`${facts.size}-${facts.mtimeNs}-${facts.ino}-`);
}

/** Whether both stamps are of the same content, wherever and whenever it lay. */
export function sameContent(first: string, second: string): boolean {
  return contentHashOf(first) === contentHashOf(second);
}

function contentHashOf(stamp: string): string {
  return stamp.slice(stamp.lastIndexOf('-') + 1);
}
