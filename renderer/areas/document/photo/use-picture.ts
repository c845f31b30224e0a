import { useEffect, useState } from 'react';
import type { Photo } from '../../../../boards/document/photo';
import { decodedProblem, readHead } from '../../../../boards/pinout/photo/picture-head';
import type { PictureProblem } from '../../../../boards/pinout/photo/picture-problem';
import type { Pixels } from '../../../../boards/pinout/photo/straighten';
import { fromBase64 } from './base64';
import { decoded, penOn } from './take-photo';

/** A photo of the sheet, decoded: to be drawn, and as pixels to be straightened. */
export interface OpenPicture {
  readonly image: OffscreenCanvas;
  readonly pixels: Pixels;
}

export type PictureState =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'open'; readonly picture: OpenPicture }
  | { readonly kind: 'refused'; readonly problem: PictureProblem };

const WAITING: PictureState = { kind: 'waiting' };

/** The photo as a picture. A sheet may come from anywhere: what it holds is looked at like any file. */
export function usePicture(photo: Photo): PictureState {
  const { type, data, widthPx, heightPx } = photo;
  const [state, setState] = useState<{ readonly of: string; readonly state: PictureState } | null>(null);
  useEffect(() => {
    let gone = false;
    void openPicture({ type, data, widthPx, heightPx }).then((opened) => {
      if (!gone) setState({ of: data, state: opened });
    });
    return () => {
      gone = true;
    };
  }, [type, data, widthPx, heightPx]);
  return state?.of === data ? state.state : WAITING;
}

async function openPicture({
  type,
  data,
  widthPx,
  heightPx,
}: Pick<Photo, 'type' | 'data' | 'widthPx' | 'heightPx'>): Promise<PictureState> {
  const refused = (problem: PictureProblem): PictureState => ({ kind: 'refused', problem });
  const bytes = fromBase64(data);
  const head = readHead(bytes);
  if (!head.ok) return refused(head.problem);
  const said = { ...head.value, widthPx, heightPx };
  const lie = decodedProblem(said, head.value);
  if (lie !== undefined) return refused(lie);
  const bitmap = await decoded(new Blob([bytes], { type }));
  if (bitmap === null) return refused({ code: 'undecodable', kind: head.value.kind });
  const [width, height] = [bitmap.width, bitmap.height];
  if (width !== widthPx || height !== heightPx) {
    bitmap.close();
    return refused({
      code: 'lying',
      saidWidthPx: widthPx,
      saidHeightPx: heightPx,
      widthPx: width,
      heightPx: height,
    });
  }
  const image = new OffscreenCanvas(width, height);
  const pen = penOn(image);
  pen.drawImage(bitmap, 0, 0);
  bitmap.close();
  return { kind: 'open', picture: { image, pixels: pen.getImageData(0, 0, width, height) } };
}
