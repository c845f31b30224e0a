import { ENGINE_NAMES } from './hostile-texts';

const MILLION = 1_000_000;
const deep = (levels: number) => `${'['.repeat(levels)}${']'.repeat(levels)}`;
const LONG = `"${'x'.repeat(100 * 1024 * 1024)}"`;
const json = (value: unknown) => JSON.stringify(value);

/**
 * What a page that was taken over could send in place of what a channel takes, as it crosses at either door: a text
 * that is to be JSON. What no JSON can hold never comes to a call.
 */
export const HARMFUL_INPUTS: readonly (readonly [string, string])[] = [
  ['null', 'null'],
  ['a number', '1'],
  ['a number beyond all numbers', '1e999'],
  ['a text', '"x"'],
  ['a path', '"/etc/passwd"'],
  ['a path for a handle', '{"handle":"/etc/passwd"}'],
  ['a handle nobody gave out', json({ handle: 'A'.repeat(32) })],
  [
    'a handle twice, the second a path',
    json({ handle: 'A'.repeat(32) }).replace('}', ',"handle":"/etc/passwd"}'),
  ],
  ['half a letter for a handle', '{"handle":"\\ud800"}'],
  ['an empty object', '{}'],
  ['a list', '[]'],
  ['a list of handles', '{"handles":["/etc/passwd"]}'],
  ['a million levels', deep(MILLION)],
  ['a million levels for a field', `{"handle":${deep(MILLION)}}`],
  ['100 MB of text', LONG],
  ['100 MB for a field', `{"handle":${LONG}}`],
  ['a list without end', json({ handles: Array.from({ length: 100_000 }, () => 'A'.repeat(32)) })],
  ['bytes as they are packed', '{"type":"Buffer","data":[47,101,116,99]}'],
  ['the engine’s own names', '{"__proto__":{"handle":"x"},"constructor":{"prototype":{"x":1}}}'],
  ...ENGINE_NAMES.map((name) => [`the handle ${name}`, `{"handle":${json(name)}}`] as const),
];

/** What is no input at all, since it cannot be read. */
export const UNREADABLE: readonly (readonly [string, string])[] = [
  ['a number that is none', 'NaN'],
  ['a function', '() => 1'],
  ['a bracket too few', '{"handle":"x"'],
  ['two values', '{} {}'],
  ['a byte order mark', '\ufeff{}'],
];
