import { describe, expect, it } from 'vitest';
import { FORMATS } from '../../../boards/document/formats';
import { type Chains, type Migration, upgrade } from '../../../boards/document/migrate';
import { MIGRATIONS } from '../../../boards/document/migrations';
import { parseDocument } from '../../../boards/document/parse';
import { soundBuild } from './refused';

/** A made-up past of board sheets: version 1 called the outline "size", version 2 gave it as one text. */
const splitSize: Migration = {
  slug: 'size-as-text',
  migrate: ({ size, ...sheet }) => ({ ...sheet, size: `${Reflect.get(Object(size), 'w')}x100` }),
};
const nameOutline: Migration = {
  slug: 'size-becomes-outline',
  migrate: ({ size, ...sheet }) => {
    const [widthMm, depthMm] = String(size).split('x').map(Number);
    return { ...sheet, outline: { widthMm, depthMm } };
  },
};
const PAST: Chains = { ...MIGRATIONS, 'leadwright/board': [splitSize, nameOutline] };

const first = { format: 'leadwright/board', version: 1, id: 'desk', size: { w: 244 } };
const second = { format: 'leadwright/board', version: 2, id: 'desk', size: '244x100' };
const third = { format: 'leadwright/board', version: 3, id: 'desk', outline: { widthMm: 244, depthMm: 100 } };

describe('a file of an older version', () => {
  it('is led step by step from its own version to that of today', () => {
    for (const old of [first, second, third])
      expect(upgrade(old, 'leadwright/board', PAST)).toEqual({ ok: true, value: third });
  });

  it('is not changed itself', () => {
    const old = structuredClone(first);
    upgrade(old, 'leadwright/board', PAST);
    expect(old).toEqual(first);
  });

  it('has the sheets inside it led on too, each from its own version', () => {
    const build = { format: 'leadwright/build', version: 1, board: first, case: { format: 'odd' } };
    expect(upgrade(build, 'leadwright/build', PAST)).toEqual({
      ok: true,
      value: { ...build, board: third },
    });
  });

  it('is refused by number when it, or a sheet inside it, is newer than today', () => {
    const newer = { ok: false, problem: { code: 'newer', format: 'leadwright/board', version: 4, known: 3 } };
    expect(upgrade({ ...third, version: 4 }, 'leadwright/board', PAST)).toEqual(newer);
    const build = { format: 'leadwright/build', version: 1, board: { ...third, version: 4 } };
    expect(upgrade(build, 'leadwright/build', PAST)).toEqual(newer);
  });

  it('is told which versions there are when it names none', () => {
    for (const version of [undefined, 0, -1, 1.5, '1', null, 2 ** 60])
      expect(upgrade({ ...first, version }, 'leadwright/board', PAST)).toMatchObject({
        problem: { code: 'invalid', fields: [{ path: 'version', expected: 'a whole number from 1 to 3' }] },
      });
  });

  it('carries an own __proto__ through every step as plain data', () => {
    const evil: unknown = JSON.parse(`{"__proto__":{"polluted":1},${JSON.stringify(first).slice(1)}`);
    const result = upgrade(evil, 'leadwright/board', PAST);
    expect(result.ok && Object.keys(Object(result.value))).toContain('__proto__');
    expect(result.ok && Reflect.get(Object(result.value), 'polluted')).toBeUndefined();
  });

  it('is checked like any other once it is of today', () => {
    const { outline: _, ...board } = soundBuild().board;
    const old = { ...board, version: 1, size: { w: 244 } };
    const result = parseDocument(JSON.stringify(old), PAST);
    // Today's schema knows version 1 alone, so the made-up version 3 is the one thing it refuses.
    expect(result).toEqual({
      ok: false,
      problem: { code: 'invalid', fields: [{ path: 'version', expected: '1', found: '3' }], more: 0 },
    });
  });
});

describe('the versions of today', () => {
  it.each(FORMATS)('$format: the schema stands at the end of its chain', ({ format, schema }) => {
    expect(schema.shape.version.value).toBe(MIGRATIONS[format].length + 1);
    expect(schema.shape.format.value).toBe(format);
  });
});
