import { constants } from 'node:os';
import { describe, expect, test } from 'vitest';
import { errnoOf, orNullIfMissing } from '../../../electron/host/errno';
import { saveProblemOf } from '../../../electron/host/save-problem';

const failure = (code: string) => Object.assign(new Error(code), { code });

/**
 * What each failure of the system means for a file that is written: POSIX.1-2017, System Interfaces, 2.3 Error
 * Numbers.
 */
const MEANINGS: Readonly<Record<string, object>> = {
  ENOSPC: { code: 'no-space', name: 'a.json', room: null },
  EDQUOT: { code: 'quota-used', name: 'a.json' },
  EACCES: { code: 'no-permission', name: 'a.json' },
  EPERM: { code: 'no-permission', name: 'a.json' },
  EROFS: { code: 'read-only-disk', name: 'a.json' },
  ENOENT: { code: 'folder-gone', name: 'a.json' },
  ENOTDIR: { code: 'folder-gone', name: 'a.json' },
  ENAMETOOLONG: { code: 'bad-name', name: 'a.json', expected: 'a name that this disk can take' },
  EINVAL: { code: 'bad-name', name: 'a.json', expected: 'a name that this disk can take' },
  EILSEQ: { code: 'bad-name', name: 'a.json', expected: 'a name that this disk can take' },
  EISDIR: { code: 'special', name: 'a.json' },
  ELOOP: { code: 'special', name: 'a.json' },
  EIO: { code: 'unwritable', name: 'a.json', detail: 'EIO' },
  EFBIG: { code: 'unwritable', name: 'a.json', detail: 'EFBIG' },
};

test.each(Object.entries(MEANINGS))('%s is told for what it is', (code, problem) => {
  expect(saveProblemOf(failure(code), 'a.json')).toEqual(problem);
});

test('What is no failure of the system is a bug, and is thrown on', () => {
  const bug = new TypeError('x is not a function');
  expect(() => saveProblemOf(bug, 'a.json')).toThrow(bug);
});

describe('The name of a failure', () => {
  test('is the one the system gives it', () => {
    expect(errnoOf(failure('ENOSPC'))).toBe('ENOSPC');
    expect(errnoOf(failure('E2BIG'))).toBe('E2BIG');
  });

  test.each(['ERR_INVALID_ARG_TYPE', 'xENOSPC', 'ENOSPCx', 'E', ''])(
    'is none where the code is Node’s own: “%s”',
    (code) => {
      expect(errnoOf(failure(code))).toBeNull();
    },
  );

  test.each([
    ['nothing', undefined],
    ['a text', 'ENOSPC'],
    ['no error', { code: 'ENOSPC' }],
    ['an error without a code', new Error('ENOSPC')],
    ['a code that is no text', Object.assign(new Error('x'), { code: 28 })],
    ['a number without a call', Object.assign(new Error('x'), { code: 28, errno: -28 })],
    ['a call without a number', Object.assign(new Error('x'), { code: '', syscall: 'write' })],
    ['a number that is none', Object.assign(new Error('x'), { code: '', errno: 'x', syscall: 'write' })],
  ])('is none of %s', (_, thrown) => {
    expect(errnoOf(thrown)).toBeNull();
  });

  test('is found by its number where Node has no name for it: that of a used-up quota', () => {
    const unnamed = (errno: number) =>
      Object.assign(new Error('x'), { code: 'Unknown system error', errno, syscall: 'write' });
    expect(errnoOf(unnamed(-constants.errno.EDQUOT))).toBe('EDQUOT');
    expect(errnoOf(unnamed(-123_456))).toBe('E123456');
  });
});

test('Only what is missing is nothing; other failures go on', async () => {
  expect(await orNullIfMissing(Promise.resolve(0))).toBe(0);
  expect(await orNullIfMissing(Promise.reject(failure('ENOENT')))).toBeNull();
  await expect(orNullIfMissing(Promise.reject(failure('EACCES')))).rejects.toThrow('EACCES');
});
