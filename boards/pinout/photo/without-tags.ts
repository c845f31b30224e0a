const APPLICATION_0 = 0xe0;
const APPLICATION_15 = 0xef;
const COMMENT = 0xfe;
const START_OF_SCAN = 0xda;

/**
 * A JPEG without what is written beside the pixels: Exif, XMP, colour profiles, comments. Only the segment
 * that says it is a JPEG file (JFIF, application 0) stays of them, and what is needed to decode it (ITU-T
 * T.81, annex B). The bytes come from a packer of our own side, so that they are a JPEG.
 */
export function withoutTags(jpeg: Uint8Array): Uint8Array<ArrayBuffer> {
  const kept: Uint8Array[] = [jpeg.subarray(0, 2)];
  let at = 2;
  while (at + 4 <= jpeg.length && jpeg[at + 1] !== START_OF_SCAN) {
    const end = at + 2 + (jpeg[at + 2] ?? 0) * 256 + (jpeg[at + 3] ?? 0);
    if (!isTag(jpeg[at + 1] ?? 0)) kept.push(jpeg.subarray(at, end));
    at = end;
  }
  kept.push(jpeg.subarray(at));
  const whole = new Uint8Array(kept.reduce((sum, { length }) => sum + length, 0));
  let to = 0;
  for (const part of kept) {
    whole.set(part, to);
    to += part.length;
  }
  return whole;
}

function isTag(marker: number): boolean {
  return marker === COMMENT || (marker > APPLICATION_0 && marker <= APPLICATION_15);
}
