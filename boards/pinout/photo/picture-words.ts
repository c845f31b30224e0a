import { megabytes } from '../../base/megabytes';
import type { OpenWords } from '../../document/problem/problem-words';
import { count } from '../../document/problem/shown-value';
import { PICTURE_LIMITS, type PictureProblem } from './picture-problem';

const TAKEN = 'Choose a photo as PNG, JPEG or WebP.';
const AGAIN = 'Copy it from the camera once more, or choose another photo.';
const SMALLER = 'Save it at a smaller size, or cut out the part with the connector.';

/** Why a file was not taken as a photo, in words. The name is that of the file as the person knows it. */
export function pictureProblemWords(problem: PictureProblem, fileName: string): OpenWords {
  const [line, advice] = lineAndAdvice(problem);
  return { title: `“${fileName}” cannot be used as a photo`, lines: [line], advice };
}

function lineAndAdvice(problem: PictureProblem): readonly [line: string, advice: string] {
  switch (problem.code) {
    case 'empty':
      return ['There is nothing in it.', AGAIN];
    case 'too-large-file':
      return [
        `It is ${megabytes(problem.bytes)} long, and a photo can be at most ${megabytes(PICTURE_LIMITS.fileBytes)}.`,
        SMALLER,
      ];
    case 'drawing':
      return ['It is an SVG: a drawing, not a photo, whatever its name says.', TAKEN];
    case 'web-page':
      return ['It is a web page and not the picture on it.', `Save the picture itself. ${TAKEN}`];
    case 'other-picture':
      return [`It is a picture of the kind ${problem.kind}.`, `Save it as PNG, JPEG or WebP first.`];
    case 'no-picture':
      return [
        problem.kind === undefined ? 'It is not a picture.' : `It is not a picture but ${problem.kind}.`,
        TAKEN,
      ];
    case 'cut-off':
      return [`It begins as a ${problem.kind} and is cut off before its end.`, AGAIN];
    case 'too-many-pixels':
      return [
        `It says it has ${sizeWords(problem)}: ${megapixels(problem)}. A photo can have at most ${PICTURE_LIMITS.pixels / 1e6}\u00a0megapixels.`,
        SMALLER,
      ];
    case 'too-long-side':
      return [
        `It says it has ${sizeWords(problem)}, and a side can have at most ${count(PICTURE_LIMITS.sidePx)}\u00a0pixels.`,
        SMALLER,
      ];
    case 'too-small':
      return [
        `It says it has ${sizeWords(problem)}, and pins cannot be seen with fewer than ${PICTURE_LIMITS.leastSidePx}\u00a0pixels to a side.`,
        'Take a photo from nearer by.',
      ];
    case 'undecodable':
      return [`It begins as a ${problem.kind}, but what follows is damaged.`, AGAIN];
    case 'lying':
      return [
        `It says it has ${count(problem.saidWidthPx)} × ${count(problem.saidHeightPx)}\u00a0pixels, and it has ${sizeWords(problem)}.`,
        'Something has changed or damaged the file. Choose the photo as it came from the camera.',
      ];
  }
}

function sizeWords({ widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number }): string {
  return `${count(widthPx)} × ${count(heightPx)}\u00a0pixels`;
}

function megapixels({ widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number }): string {
  return `${count(Math.round((widthPx * heightPx) / 1e6))}\u00a0megapixels`;
}
