import type { Photo } from '../../document/photo';

/** What a picture file may be. Sizes are of the whole file and of the decoded picture. */
export const PICTURE_LIMITS = {
  fileBytes: 64 * 1024 * 1024,
  pixels: 50_000_000,
  sidePx: 16_384,
  leastSidePx: 16,
} as const;

/** The kinds of picture that are taken: those that a sheet holds. */
export type PictureType = Photo['type'];

/** Why a file is not taken as a photo. Closed: every one has words in picture-words.ts. */
export type PictureProblem =
  | { readonly code: 'empty' }
  | { readonly code: 'too-large-file'; readonly bytes: number }
  | { readonly code: 'drawing' }
  | { readonly code: 'web-page' }
  /** A picture of a kind that is not taken: "GIF", "TIFF". */
  | { readonly code: 'other-picture'; readonly kind: string }
  /** A file of another kind: "a PDF", "text". */
  | { readonly code: 'no-picture'; readonly kind?: string }
  | { readonly code: 'cut-off'; readonly kind: string }
  | { readonly code: 'too-many-pixels'; readonly widthPx: number; readonly heightPx: number }
  | { readonly code: 'too-long-side'; readonly widthPx: number; readonly heightPx: number }
  | { readonly code: 'too-small'; readonly widthPx: number; readonly heightPx: number }
  | { readonly code: 'undecodable'; readonly kind: string }
  | {
      readonly code: 'lying';
      readonly saidWidthPx: number;
      readonly saidHeightPx: number;
      readonly widthPx: number;
      readonly heightPx: number;
    };
