import { never } from '../../boards/base/never';
import type { SaveProblem } from '../../boards/host';

/** Why a file could not be written, and what to do, for a person who named it. */
export function saveProblemSentences(problem: SaveProblem): readonly [line: string, advice: string] {
  switch (problem.code) {
    case 'no-space':
      return ['The disk is full.', 'Free some space, or name a file on another disk.'];
    case 'no-permission':
      return ['Your account may not write there.', 'Name a file in a folder of your own.'];
    case 'read-only-disk':
      return ['The disk is read-only.', 'Name a file on another disk.'];
    case 'folder-gone':
      return ['There is no such folder.', 'Make the folder first, or name another.'];
    case 'special':
      return ['There is something of that name that is not an ordinary file.', 'Name another file.'];
    case 'bad-name':
      return [`Expected ${problem.expected}.`, 'Name another file.'];
    case 'unwritable':
      return [`The system says ${problem.detail}.`, 'Name a file in another folder.'];
    case 'changed-outside':
    case 'invalid':
    case 'stale-handle':
      return ['It could not be replaced.', 'Name another file.'];
    default:
      return never(problem);
  }
}
