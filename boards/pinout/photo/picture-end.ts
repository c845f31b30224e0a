import type { PictureType } from './picture-problem';

/**
 * Whether a picture file is there to its end: a decoder would fill the rest with grey and say nothing.
 * PNG (third edition), section 5.3: chunks, the last of them IEND. JPEG (ITU-T T.81), annex B.1: segments
 * with their lengths, then the scan up to the end-of-image marker. WebP (RFC 9649), section 2.3: the length
 * that the file says of itself.
 */
export function isWhole(bytes: Uint8Array, type: PictureType): boolean {
  switch (type) {
    case 'image/png':
      return pngEnds(bytes);
    case 'image/jpeg':
      return jpegEnds(bytes);
    case 'image/webp':
      return numberAt(bytes, 4, true) + 8 <= bytes.length;
  }
}

const IEND = 0x49454e44;

function pngEnds(bytes: Uint8Array): boolean {
  let at = 8;
  while (at + 12 <= bytes.length) {
    const length = numberAt(bytes, at, false);
    if (numberAt(bytes, at + 4, false) === IEND) return true;
    at += length + 12;
  }
  return false;
}

const START_OF_SCAN = 0xda;
const END_OF_IMAGE = 0xd9;

function jpegEnds(bytes: Uint8Array): boolean {
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) return false;
    const marker = bytes[at + 1];
    if (marker === 0xff) at += 1;
    else if (marker === START_OF_SCAN) return scanEnds(bytes, at + 2);
    else at += 2 + (bytes[at + 2] ?? 0) * 256 + (bytes[at + 3] ?? 0);
  }
  return false;
}

/** A byte of the scan that looks like a marker has a zero behind it, so that this pair is the end. */
function scanEnds(bytes: Uint8Array, from: number): boolean {
  for (let at = bytes.indexOf(0xff, from); at >= 0; at = bytes.indexOf(0xff, at + 1))
    if (bytes[at + 1] === END_OF_IMAGE) return true;
  return false;
}

function numberAt(bytes: Uint8Array, at: number, littleEnd: boolean): number {
  return at + 4 > bytes.length
    ? Number.POSITIVE_INFINITY
    : new DataView(bytes.buffer, bytes.byteOffset).getUint32(at, littleEnd);
}
