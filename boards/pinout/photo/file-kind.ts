import type { PictureProblem, PictureType } from './picture-problem';

/** A kind of picture that is taken, by its media type and as people call it. */
export interface TakenKind {
  readonly type: PictureType;
  readonly kind: string;
}

interface Signature {
  /** Latin-1 text at a place of the file; a dot stands for any byte. */
  readonly at: number;
  readonly text: string;
}

const TAKEN: readonly (TakenKind & Signature)[] = [
  { type: 'image/png', kind: 'PNG', at: 0, text: '\x89PNG\r\n\x1a\n' },
  { type: 'image/jpeg', kind: 'JPEG', at: 0, text: '\xff\xd8\xff' },
  { type: 'image/webp', kind: 'WebP', at: 0, text: 'RIFF....WEBP' },
];

/** Kinds of picture that are known by their first bytes, and not taken. */
const OTHERS: readonly (Signature & { readonly kind: string })[] = [
  { kind: 'GIF', at: 0, text: 'GIF8' },
  { kind: 'BMP', at: 0, text: 'BM' },
  { kind: 'TIFF', at: 0, text: 'II*\0' },
  { kind: 'TIFF', at: 0, text: 'MM\0*' },
  { kind: 'AVIF', at: 4, text: 'ftypavif' },
  { kind: 'HEIF', at: 4, text: 'ftyphei' },
  { kind: 'HEIF', at: 4, text: 'ftypmif1' },
  { kind: 'JPEG XL', at: 0, text: '\xff\x0a' },
  { kind: 'JPEG XL', at: 4, text: 'JXL ' },
  { kind: 'JPEG 2000', at: 4, text: 'jP  ' },
  { kind: 'icon', at: 0, text: '\0\0\x01\0' },
];

/** Files that are often near pictures, and are none. */
const STRANGERS: readonly (Signature & { readonly kind: string })[] = [
  { kind: 'a PDF', at: 0, text: '%PDF-' },
  { kind: 'an archive', at: 0, text: 'PK\x03\x04' },
  { kind: 'a video', at: 4, text: 'ftyp' },
  { kind: 'a sound', at: 0, text: 'RIFF....WAVE' },
];

const LOOKED_AT = 4_096;

/** What kind of file it is by its first bytes, whatever its name says: one that is taken, or why not. */
export function kindOf(bytes: Uint8Array): TakenKind | PictureProblem {
  const taken = TAKEN.find((each) => begins(bytes, each));
  if (taken !== undefined) return { type: taken.type, kind: taken.kind };
  const other = OTHERS.find((each) => begins(bytes, each));
  if (other !== undefined) return { code: 'other-picture', kind: other.kind };
  const stranger = STRANGERS.find((each) => begins(bytes, each));
  if (stranger !== undefined) return { code: 'no-picture', kind: stranger.kind };
  const text = textOf(bytes.subarray(0, LOOKED_AT));
  if (text === undefined) return { code: 'no-picture' };
  if (/<svg[\s>]/i.test(text)) return { code: 'drawing' };
  if (/<(?:!doctype\s+html|html|head|body)[\s>]/i.test(text)) return { code: 'web-page' };
  return { code: 'no-picture', kind: 'text' };
}

function begins(bytes: Uint8Array, { at, text }: Signature): boolean {
  return (
    bytes.length >= at + text.length &&
    [...text].every((letter, place) => letter === '.' || bytes[at + place] === letter.charCodeAt(0))
  );
}

/** The bytes as letters where all of them could be text; undefined where some could not. */
function textOf(bytes: Uint8Array): string | undefined {
  if (bytes.some((byte) => byte < 9 || (byte > 13 && byte < 32))) return undefined;
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return text;
}
