import { ok, type Result, refuse } from '../../../../boards/base/result';
import { LIMITS } from '../../../../boards/document/limits';
import type { Photo } from '../../../../boards/document/photo';
import { LineZ } from '../../../../boards/document/text';
import { decodedProblem, readHead } from '../../../../boards/pinout/photo/picture-head';
import { PICTURE_LIMITS, type PictureProblem } from '../../../../boards/pinout/photo/picture-problem';
import { withoutTags } from '../../../../boards/pinout/photo/without-tags';
import { toBase64 } from './base64';

/** What is being done with a file, in the order in which it is done. */
export type TakingStep = 'reading' | 'decoding' | 'scaling' | 'packing';

/** A photo as the sheet holds it, but for its id and what is pointed at. */
export type TakenPhoto = Omit<Photo, 'id' | 'points'>;

/** Tried one after the other until the packed picture is small enough. */
const QUALITIES = [0.9, 0.8, 0.65, 0.5] as const;
const MOST_BYTES = (LIMITS.photoLength / 4) * 3;

/**
 * A picture file as a photo for the sheet: looked at before it is decoded, turned upright by the camera's
 * own note, scaled down, and packed anew from its pixels alone, so that nothing a camera has written
 * beside them comes along.
 *
 * @returns null when it was cancelled on the way
 */
export async function takePhoto(
  file: Blob,
  name: string,
  onStep: (step: TakingStep) => void,
  cancelled: AbortSignal,
): Promise<Result<TakenPhoto, PictureProblem> | null> {
  if (file.size > PICTURE_LIMITS.fileBytes) return refuse({ code: 'too-large-file', bytes: file.size });
  onStep('reading');
  const bytes = await file.arrayBuffer().catch(() => null);
  if (cancelled.aborted) return null;
  if (bytes === null) return refuse({ code: 'no-picture', kind: 'a folder' });
  const head = readHead(new Uint8Array(bytes));
  if (!head.ok) return head;
  onStep('decoding');
  const { type, kind } = head.value;
  const picture = await decoded(new Blob([bytes], { type }));
  if (picture === null) return refuse({ code: 'undecodable', kind });
  try {
    if (cancelled.aborted) return null;
    const { width: widthPx, height: heightPx } = picture;
    const lie = decodedProblem(head.value, { widthPx, heightPx });
    if (lie !== undefined) return refuse(lie);
    onStep('scaling');
    const small = scaledDown(picture);
    if (Math.min(small.width, small.height) < PICTURE_LIMITS.leastSidePx)
      return refuse({ code: 'too-small', widthPx: small.width, heightPx: small.height });
    onStep('packing');
    const data = await packed(small);
    if (cancelled.aborted) return null;
    return ok({
      title: titleFrom(name),
      type: 'image/jpeg',
      widthPx: small.width,
      heightPx: small.height,
      data,
    });
  } finally {
    picture.close();
  }
}

/** The picture, turned as its own note says; null where the browser cannot make one of the file. */
export async function decoded(file: Blob): Promise<ImageBitmap | null> {
  return createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => null);
}

function scaledDown(picture: ImageBitmap): OffscreenCanvas {
  const factor = Math.min(1, LIMITS.photoSidePx / Math.max(picture.width, picture.height));
  const canvas = new OffscreenCanvas(Math.round(picture.width * factor), Math.round(picture.height * factor));
  const pen = penOn(canvas);
  // What is clear in the picture becomes paper: the packed kind knows no opacity.
  pen.fillStyle = 'white';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return canvas;
}

/** The pen of a canvas that nothing else draws on. */
export function penOn(canvas: OffscreenCanvas): OffscreenCanvasRenderingContext2D {
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('A canvas without a pen');
  return pen;
}

async function packed(canvas: OffscreenCanvas): Promise<string> {
  let bytes = new Uint8Array();
  for (const quality of QUALITIES) {
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality });
    bytes = withoutTags(new Uint8Array(await blob.arrayBuffer()));
    if (bytes.length <= MOST_BYTES) break;
  }
  return toBase64(bytes);
}

/** The file's name without its ending, as a line of text. */
function titleFrom(name: string): string {
  const title = name.replace(/\.[A-Za-z0-9]{1,5}$/, '').slice(0, LIMITS.textLength);
  return LineZ.safeParse(title).success && title !== '' ? title : 'Photo';
}
