import { never } from '../../boards/base/never';
import { roomWords } from '../../boards/document/problem/room-words';
import type { SaveProblem, ScarceRoom } from '../../boards/host';

/** Why a file could not be written, and what to do, for a person who named it. */
export function saveProblemSentences(problem: SaveProblem): readonly [line: string, advice: string] {
  switch (problem.code) {
    case 'no-space':
      return noSpaceSentences(problem.room);
    case 'quota-used':
      return [
        'What your account may use of that disk is used up.',
        'Remove files of yours there, or name a file on another disk.',
      ];
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

function noSpaceSentences(room: ScarceRoom): readonly [line: string, advice: string] {
  if (room === null) return ['The disk is full.', 'Free some space, or name a file on another disk.'];
  const { needed, free, missing } = roomWords(room);
  return [
    `The disk is full: ${free === null ? 'nothing is free' : `there is room for ${free}`}, and ${needed} is needed.`,
    `Make at least ${missing} free there, or name a file on another disk.`,
  ];
}
