import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { inRoot } from '../../electron/start/place.mjs';
import { GROUPS } from './mutation/groups.mjs';
import { judge } from './mutation/mutants';

const mutant = (status: string, line = 'a < b', replacement = 'a <= b') =>
  ({ file: 'x.ts', line, replacement, status, lineNumber: 1 }) as const;
const several = (count: number, status: string) => Array.from({ length: count }, () => mutant(status));

test('Every module that is to be changed is there, and stands in one group', () => {
  const modules = Object.values(GROUPS).flatMap((group) => group.modules);
  expect(modules.filter((path) => !existsSync(inRoot(path)))).toEqual([]);
  expect(new Set(modules).size).toBe(modules.length);
});

describe('A group of changed modules', () => {
  test('holds at 85 of 100 noticed and fails at 84, with every change that was not', () => {
    expect(judge('g', [...several(85, 'Killed'), ...several(15, 'Survived')], []).failures).toEqual([]);
    const low = judge('g', [...several(84, 'Killed'), ...several(16, 'Survived')], []);
    expect(low.failures).toHaveLength(16);
    expect(low.failures[0]).toBe('g: x.ts:1: a <= b is not noticed');
  });

  test('counts a change that never ends as noticed, and one that no test reaches as not', () => {
    const { counted, noticed } = judge('g', [mutant('Timeout'), mutant('NoCoverage')], []);
    expect([counted, noticed]).toEqual([2, 1]);
  });

  test('counts nothing that could not be run, and fails when nothing is left', () => {
    expect(judge('g', several(3, 'RuntimeError'), []).failures).toEqual(['g: nothing was changed']);
  });

  test('leaves out a change that does nothing, and fails when that is noticed or gone', () => {
    const equivalent = { file: 'x.ts', line: 'a < b', replacement: 'a <= b', why: 'a is never b' };
    const killed = mutant('Killed', 'c');
    expect(judge('g', [mutant('Survived'), killed], [equivalent])).toMatchObject({
      counted: 1,
      noticed: 1,
      equivalents: 1,
      failures: [],
    });
    expect(judge('g', [mutant('Killed')], [equivalent]).failures).toHaveLength(1);
    expect(judge('g', [killed], [equivalent]).failures).toHaveLength(1);
  });
});
