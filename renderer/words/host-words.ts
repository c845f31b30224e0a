import { megabytes } from '../../boards/base/megabytes';
import { never } from '../../boards/base/never';
import { roomWords } from '../../boards/document/problem/room-words';
import type { ReadProblem, SaveProblem, ScarceRoom } from '../../boards/host';
import type { Message } from '../store/dialog';

const KEPT = 'What you have open stays as it is.';
const HERE = 'Your work is still here.';

/** Words about a file that could not be opened, and that nothing is lost by it. */
export function besideWork(words: Message): Message {
  return { ...words, advice: `${words.advice} ${KEPT}` };
}

function message(title: string, line: string, advice: string, kept: string): Message {
  return { title, lines: [line, kept], advice };
}

/** Why a file could not be read, and what to do. */
export function readProblemWords(problem: ReadProblem): Message {
  const name = `“${problem.name}”`;
  switch (problem.code) {
    case 'not-found':
      return message(
        `${name} is not there`,
        'The file has been moved, renamed or deleted.',
        'Choose it again with Open.',
        KEPT,
      );
    case 'no-permission':
      return message(
        `${name} may not be read`,
        'Your account has no permission to read it.',
        'Ask its owner for permission, or copy it to a folder of your own.',
        KEPT,
      );
    case 'folder':
      return message(
        `${name} is a folder`,
        'A build, a board sheet or a case sheet was expected.',
        'Open the folder and choose a file in it.',
        KEPT,
      );
    case 'special':
      return message(
        `${name} is not an ordinary file`,
        'It is a device or a pipe, and could be read for ever.',
        'Choose an ordinary file.',
        KEPT,
      );
    case 'too-large':
      return message(
        `${name} is too large`,
        `It has ${megabytes(problem.bytes)}; up to ${megabytes(problem.limitBytes)} are read.`,
        'Check that it is the file you meant.',
        KEPT,
      );
    case 'not-text':
      return message(
        `${name} is not text`,
        'A file of this program is JSON text in UTF-8.',
        'Check that it is the file you meant.',
        KEPT,
      );
    case 'stale-handle':
      return message(
        `${name} has to be chosen again`,
        'The program was started anew since it was chosen.',
        'Choose it again with Open.',
        KEPT,
      );
    case 'open-elsewhere':
      return message(
        'This work is open in another window',
        'Two windows cannot both go on with it.',
        'Go on in the other window, or close it first.',
        KEPT,
      );
    case 'unreadable':
      return message(
        `${name} could not be read`,
        `The system says: ${problem.detail}.`,
        'Check the disk or the connection, then try again.',
        KEPT,
      );
    default:
      return never(problem);
  }
}

/** That unsaved work is not kept as a recovery copy for the moment, and why. */
export function recoveryTroubleWords(problem: SaveProblem | null): string {
  if (problem === null)
    return 'No recovery copy is kept: the program behind this window does not answer. Start Leadwright again.';
  const [why = ''] = saveProblemWords(problem).lines;
  return `No recovery copy could be written: ${why} Save your work now, to another disk if need be.`;
}

/** Where work is that could not be saved; null where it needs no copy. */
export function unsavedWords(kept: boolean | null): string {
  if (kept === null) return HERE;
  return kept
    ? 'Your work is still here, and a recovery copy is kept.'
    : 'Your work is still here; a recovery copy could not be written either.';
}

/** That several files came at once, and what became of them. */
export function firstOnlyWords(files: number): string {
  return `A window shows one file at a time: of these ${files} only the first was taken. Open the others one after the other.`;
}

/** That nobody answered when something was to be saved. */
export function noAnswerWords(name: string): Message {
  return message(
    `“${name}” was not saved`,
    'The program behind this window does not answer.',
    'Leave this window open, start Leadwright again, and copy over what matters; what was kept before is offered there.',
    unsavedWords(false),
  );
}

function noSpaceWords(name: string, room: ScarceRoom, safe: string): Message {
  const title = `${name} was not saved`;
  const stays = 'The file on disk is as it was.';
  if (room === null)
    return message(title, `The disk is full. ${stays}`, 'Free some space, or save to another disk.', safe);
  const { needed, free, missing } = roomWords(room);
  const line = `The disk is full: ${free === null ? 'nothing is free' : `there is room for ${free}`}, and ${needed} is needed. ${stays}`;
  return message(title, line, `Make at least ${missing} free there, or save to another disk.`, safe);
}

/**
 * Why a file could not be saved, and what to do.
 *
 * @param safe what has become of the work
 */
export function saveProblemWords(problem: SaveProblem, safe: string = HERE): Message {
  const name = `“${problem.name}”`;
  switch (problem.code) {
    case 'changed-outside':
      return message(
        `${name} has changed on disk`,
        'Another program has written it since it was opened here.',
        'Save under another name, or replace it.',
        safe,
      );
    case 'no-space':
      return noSpaceWords(name, problem.room, safe);
    case 'quota-used':
      return message(
        `${name} was not saved`,
        'What your account may use of that disk is used up. The file on disk is as it was.',
        'Remove files of yours there, or save to another disk.',
        safe,
      );
    case 'no-permission':
      return message(
        `${name} was not saved`,
        'Your account may not write there.',
        'Save to a folder of your own.',
        safe,
      );
    case 'read-only-disk':
      return message(`${name} was not saved`, 'The disk is read-only.', 'Save to another disk.', safe);
    case 'folder-gone':
      return message(
        `${name} was not saved`,
        'Its folder is no longer there.',
        'Save to another folder.',
        safe,
      );
    case 'special':
      return message(
        `${name} was not saved`,
        'There is something at that place that is not an ordinary file.',
        'Save under another name.',
        safe,
      );
    case 'bad-name':
      return message(
        `${name} cannot be the name of a file`,
        `Expected: ${problem.expected}.`,
        'Choose another name.',
        safe,
      );
    case 'invalid':
      return message(
        `${name} was not saved`,
        `${problem.path === '' ? 'Expected' : `At ${problem.path}, expected`}: ${problem.expected}.`,
        'Undo the last change, then save again.',
        safe,
      );
    case 'stale-handle':
      return message(
        `${name} has to be chosen again`,
        'The program was started anew since it was opened.',
        'Use Save as.',
        safe,
      );
    case 'unwritable':
      return message(
        `${name} was not saved`,
        `The system says: ${problem.detail}.`,
        'Save to another folder.',
        safe,
      );
    default:
      return never(problem);
  }
}
