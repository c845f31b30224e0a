import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { RULES } from '../../../boards/findings/rules/index';

const FOLDER = new URL('../../../boards/findings/rules/', import.meta.url);
const FILES = readdirSync(FOLDER).filter((name) => name !== 'index.ts');

describe('the list of rules', () => {
  test('has every rule file once, and no code twice', () => {
    const ids = RULES.map(({ id }) => `${id}.ts`);
    expect(FILES.length).toBeGreaterThan(30);
    expect(ids.toSorted()).toEqual(FILES.toSorted());
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('cannot be changed while the program runs', () => {
    expect(Object.isFrozen(RULES)).toBe(true);
    expect(RULES.every((rule) => Object.isFrozen(rule))).toBe(true);
  });

  test('explains only codes that exist, and never its own', () => {
    const ids = new Set(RULES.map(({ id }) => id));
    for (const { id, explains } of RULES) {
      expect(explains.filter((code) => !ids.has(code))).toEqual([]);
      expect(explains).not.toContain(id);
    }
  });

  test.each(FILES)('%s says its rule, a good and a bad case and where it was read, and is tested', (name) => {
    const text = readFileSync(new URL(name, FOLDER), 'utf8');
    expect(text).toMatch(/\/\*\*\n \* .+\n/);
    expect(text).toContain(' * Good: ');
    expect(text).toContain(' * Bad: ');
    const rule = RULES.find(({ id }) => `${id}.ts` === name);
    expect(rule?.source).not.toBe('');
    expect(existsSync(new URL(`rules/${name.replace('.ts', '.test.ts')}`, import.meta.url))).toBe(true);
  });
});
