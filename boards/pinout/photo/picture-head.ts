import { imageSize } from 'image-size';
import { ok, type Result, refuse } from '../../base/result';
import { kindOf } from './file-kind';
import { isWhole } from './picture-end';
import { PICTURE_LIMITS, type PictureProblem, type PictureType } from './picture-problem';

/** What a picture file says of itself, read before a single pixel is decoded. */
export interface PictureHead {
  readonly type: PictureType;
  /** "PNG", as people call it. */
  readonly kind: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** The size stands near the beginning, behind whatever a camera has put before it. */
const HEAD_BYTES = 4 * 1024 * 1024;

/** Reads what kind of picture a file is and how large, and says no to what could not be decoded in reason. */
export function readHead(bytes: Uint8Array): Result<PictureHead, PictureProblem> {
  if (bytes.length === 0) return refuse({ code: 'empty' });
  if (bytes.length > PICTURE_LIMITS.fileBytes) return refuse({ code: 'too-large-file', bytes: bytes.length });
  const found = kindOf(bytes);
  if ('code' in found) return refuse(found);
  const size = sizeIn(bytes);
  if (size === undefined) return refuse({ code: 'cut-off', kind: found.kind });
  const [widthPx, heightPx] = [size.width, size.height];
  const { pixels, sidePx, leastSidePx } = PICTURE_LIMITS;
  if (widthPx * heightPx > pixels) return refuse({ code: 'too-many-pixels', widthPx, heightPx });
  if (Math.max(widthPx, heightPx) > sidePx) return refuse({ code: 'too-long-side', widthPx, heightPx });
  if (Math.min(widthPx, heightPx) < leastSidePx) return refuse({ code: 'too-small', widthPx, heightPx });
  if (!isWhole(bytes, found.type)) return refuse({ code: 'cut-off', kind: found.kind });
  return ok({ ...found, widthPx, heightPx });
}

/**
 * The package throws at a head that ends too soon. It gets a copy: where bytes lie inside a larger buffer
 * it would read on behind their end.
 */
function sizeIn(bytes: Uint8Array): { readonly width: number; readonly height: number } | undefined {
  try {
    return imageSize(new Uint8Array(bytes.subarray(0, HEAD_BYTES)));
  } catch {
    return undefined;
  }
}

/**
 * Whether the decoded picture is as large as its head said. A camera's note which way up it was held may
 * have turned it by a quarter, so width and height may be exchanged.
 */
export function decodedProblem(
  head: PictureHead,
  decoded: { readonly widthPx: number; readonly heightPx: number },
): PictureProblem | undefined {
  const { widthPx, heightPx } = decoded;
  const asSaid = widthPx === head.widthPx && heightPx === head.heightPx;
  const turned = widthPx === head.heightPx && heightPx === head.widthPx;
  if (asSaid || turned) return undefined;
  return { code: 'lying', saidWidthPx: head.widthPx, saidHeightPx: head.heightPx, widthPx, heightPx };
}
