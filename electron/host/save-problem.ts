import type { SaveProblem } from '../../boards/host';
import { errnoOf } from './errno';

/** Names a failure of the system; a failure that is not the system's is a bug and is thrown on. */
export function saveProblemOf(thrown: unknown, name: string): SaveProblem {
  const errno = errnoOf(thrown);
  switch (errno) {
    case null:
      throw thrown;
    case 'ENOSPC':
      return { code: 'no-space', name, room: null };
    case 'EDQUOT':
      return { code: 'quota-used', name };
    case 'EACCES':
    case 'EPERM':
      return { code: 'no-permission', name };
    case 'EROFS':
      return { code: 'read-only-disk', name };
    case 'ENOENT':
    case 'ENOTDIR':
      return { code: 'folder-gone', name };
    case 'ENAMETOOLONG':
    case 'EINVAL':
    case 'EILSEQ':
      return { code: 'bad-name', name, expected: 'a name that this disk can take' };
    case 'EISDIR':
    case 'ELOOP':
      return { code: 'special', name };
    default:
      return { code: 'unwritable', name, detail: errno };
  }
}
