import { never } from '../base/never';
import type { PaperProblem } from './paper-problem';

/** What is the matter, in a sentence, and what to do. */
export interface PaperWords {
  readonly line: string;
  readonly advice: string;
}

/** Why nothing was printed, in words. */
export function paperProblemWords(problem: PaperProblem): PaperWords {
  switch (problem.code) {
    case 'no-such-connector': {
      const line = `There is no connector “${problem.id}” on the board.`;
      if (problem.nearest === undefined) return { line, advice: 'Name one by its id, as the file has it.' };
      return { line, advice: `Did you mean “${problem.nearest}”?` };
    }
    case 'no-such-page':
      return {
        line: `There is no page\u00a0${problem.page}: it is ${count(problem.pages, 'page')}.`,
        advice: `Choose a page from 1\u00a0to\u00a0${problem.pages}.`,
      };
    case 'too-many-pages':
      return {
        line: `It would take ${count(problem.pages, 'page')}, and at most ${problem.limit} are printed at once.`,
        advice: 'Choose fewer connectors.',
      };
    case 'too-many-pixels':
      return {
        line: `The picture would be ${problem.widthPx}\u00a0by\u00a0${problem.heightPx}\u00a0pixels, and at most ${megapixels(problem.limitPx)} are drawn.`,
        advice: 'Choose a smaller scale, a single page, or PDF.',
      };
    case 'stopped':
      return { line: 'It was stopped before it was done. Nothing was written.', advice: 'Print again.' };
    case 'not-a-board':
      return {
        line: `At ${problem.path || 'the top'}, expected: ${problem.expected}.`,
        advice: 'Undo the last change, then print again.',
      };
    default:
      return never(problem);
  }
}

function count(number: number, word: string): string {
  return `${number}\u00a0${word}${number === 1 ? '' : 's'}`;
}

function megapixels(pixels: number): string {
  return `${Math.round(pixels / 1e6)}\u00a0million`;
}
