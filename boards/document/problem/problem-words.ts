import { megabytes } from '../../base/megabytes';
import { LIMITS } from '../limits';
import type { OpenProblem } from './problem';
import { count } from './shown-value';

/** A message for people: what is the matter, what was found, what to do. */
export interface OpenWords {
  readonly title: string;
  readonly lines: readonly string[];
  readonly advice: string;
}

/** Why a file was not opened, in words. The name is that of the file as the person knows it. */
export function openProblemWords(problem: OpenProblem, fileName: string): OpenWords {
  const title = `“${fileName}” cannot be opened`;
  switch (problem.code) {
    case 'too-large':
      return {
        title,
        lines: [
          `It is ${megabytes(problem.bytes)} long, and a file can be at most ${megabytes(problem.limitBytes)}.`,
        ],
        advice: 'Check that it is the file you meant.',
      };
    case 'empty':
      return {
        title,
        lines: ['There is nothing in it.'],
        advice: 'Open an earlier copy of it, or begin a new build.',
      };
    case 'not-json':
      return {
        title,
        lines: [
          `It is not JSON from line\u00a0${problem.line}, column\u00a0${problem.column} on: ${problem.detail}.`,
        ],
        advice: 'Correct that line in a text editor, or open an earlier copy.',
      };
    case 'too-deep':
      return {
        title,
        lines: [
          `From line\u00a0${problem.line} on, its brackets stand more than ${problem.limit}\u00a0levels deep.`,
        ],
        advice: 'No build, board sheet or case sheet is like that: check that it is the file you meant.',
      };
    case 'not-ours':
      return {
        title,
        lines: [
          `Expected “format” to be leadwright/build, leadwright/board or leadwright/case, found ${problem.found}.`,
        ],
        advice: 'Choose a build, a board sheet or a case sheet.',
      };
    case 'newer':
      return {
        title,
        lines: [
          `It has version\u00a0${problem.version} of “${problem.format}”, and this Leadwright reads up to version\u00a0${problem.known}.`,
        ],
        advice: 'Open it with a newer Leadwright. The file was not changed.',
      };
    case 'invalid':
      return {
        title,
        lines: [
          ...problem.fields.map(({ path, expected, found }) =>
            path === ''
              ? `Expected ${expected}, found ${found}.`
              : `${path}: expected ${expected}, found ${found}.`,
          ),
          ...moreLines(problem.more),
        ],
        advice: `Correct ${problem.fields.length === 1 ? 'this place' : 'these places'} in a text editor, or open an earlier copy.`,
      };
  }
}

/** Counting stops at a limit, so that the last number there is may be too small. */
function moreLines(more: number): readonly string[] {
  if (more === 0) return [];
  const least = more + LIMITS.problemsShown >= LIMITS.problemsCounted ? 'at least ' : '';
  return [`And ${least}${count(more)}\u00a0more.`];
}
