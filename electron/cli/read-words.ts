import { megabytes } from '../../boards/base/megabytes';
import { never } from '../../boards/base/never';
import type { OpenWords } from '../../boards/document/problem/problem-words';
import type { ReadProblem } from '../../boards/host';

/** Why a file that was named on the command line could not be read, in words. */
export function readProblemWords(problem: ReadProblem, fileName: string): OpenWords {
  const [line, advice] = sentences(problem);
  return { title: `“${fileName}” cannot be read`, lines: [line], advice };
}

function sentences(problem: ReadProblem): readonly [string, string] {
  switch (problem.code) {
    case 'not-found':
      return ['There is no file of that name.', 'Check the name, and the folder you are in.'];
    case 'no-permission':
      return [
        'Your account may not read it.',
        'Ask its owner for permission, or copy it to a folder of your own.',
      ];
    case 'folder':
      return [
        'It is a folder; a build, a board sheet or a case sheet was expected.',
        'Name the files in it.',
      ];
    case 'special':
      return [
        'It is a pipe, a socket or a device; an ordinary file was expected.',
        'Save it to a file first.',
      ];
    case 'too-large':
      return [
        `It is ${megabytes(problem.bytes)} long, and a file can be at most ${megabytes(problem.limitBytes)}.`,
        'Check that it is the file you meant.',
      ];
    case 'not-text':
      return ['It is not text in UTF-8, which JSON has to be.', 'Check that it is the file you meant.'];
    case 'unreadable':
      return [`The system says ${problem.detail}.`, 'Check the disk or the connection, then try again.'];
    case 'stale-handle':
    case 'open-elsewhere':
      return ['It has to be named again.', 'Name it again.'];
    default:
      return never(problem);
  }
}
