import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CHANNELS } from '../../../boards/host';
import { reportText } from '../../../electron/host/trouble-report';
import { makeMachine } from './machine';

const AT = { version: '0.1.0', platform: 'linux', door: 'browser', when: new Date('2026-03-01T10:20:30Z') };

test('A report says what failed and where in the program', () => {
  const thrown = new TypeError("Cannot read properties of undefined (reading 'front-audio')");
  const stack = `${thrown}\n    at seatsOf (http://127.0.0.1:4711/assets/boards-x1.js:10:20)\n    at /home/ada/lw/dist/main.cjs:3:4`;
  const text = reportText({ part: 'window', name: thrown.name, message: thrown.message, stack }, AT);
  expect(text.split('\n').slice(5)).toEqual([
    'When: 2026-03-01 10:20 UTC',
    'Version: 0.1.0, browser, linux',
    'Part: window',
    'Failure: TypeError',
    'It says: Cannot read properties of undefined',
    '',
    'Where in the program:',
    '  at seatsOf (boards-x1.js:10:20)',
    '  at (main.cjs:3:4)',
    '',
  ]);
});

test('Nothing of a person’s reaches it: no path, no name, no part of a message', () => {
  const secret = fc.stringMatching(/^[A-Za-z][A-Za-z0-9 _-]{6,20}Qz$/);
  const kind = fc.constantFrom('TypeError', 'RangeError', 'SyntaxError', 'Error', 'ZodError');
  fc.assert(
    fc.property(secret, kind, fc.nat(4), (mine, name, shape) => {
      const message = [
        mine,
        `There is no lead ${mine}`,
        `Unexpected token, "name":"${mine}" is not valid JSON`,
        `ENOENT: no such file, open '/home/${mine}/Documents/${mine}.build.json'`,
        `x\n    at ${mine} (/home/${mine}/a.js:1:2)`,
      ][shape] as string;
      const stack = `${name}: ${message}\n    at run (file:///home/${mine}/lw/dist/door.mjs:1:2)\n    at ${mine}`;
      const text = reportText({ part: 'window', name, message, stack }, AT);
      expect(text).not.toContain(mine);
      expect(text).toContain('  at run (door.mjs:1:2)');
      expect(reportText({ part: 'page', name: mine, message: '', stack: mine }, AT)).not.toContain(
        `${mine} `,
      );
    }),
    { seed: 20_261_126, numRuns: 2_000 },
  );
});

test('It lies in a folder of our own, says where, and there are never more than ten', async () => {
  const { calls, data } = makeMachine();
  for (let at = 0; at < 12; at++) {
    const answer = CHANNELS.writeReport.output.parse(
      await calls.writeReport({ name: 'Error', message: `${at}`, stack: '' }),
    );
    if (!answer.ok) throw new Error(answer.problem.code);
    expect(readFileSync(join(answer.value.folder, answer.value.name), 'utf8')).toBe(answer.value.text);
    // Two of one millisecond would be one file.
    await new Promise((resolve) => setTimeout(resolve, 2));
  }
  expect(readdirSync(join(data, 'reports'))).toHaveLength(10);
});
