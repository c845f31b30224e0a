import { ENGINE_NAMES } from './hostile-texts';

function deep(levels: number): unknown {
  let value: unknown = [];
  for (let at = 0; at < levels; at++) value = [value];
  return value;
}

/** What a page that was taken over could send in place of what a channel takes. */
export const HARMFUL_INPUTS: readonly (readonly [string, unknown])[] = [
  ['null', null],
  ['a number', 1],
  ['a number that is none', Number.NaN],
  ['a text', 'x'],
  ['a path', '/etc/passwd'],
  ['a path for a handle', { handle: '/etc/passwd' }],
  ['a handle nobody gave out', { handle: 'A'.repeat(32) }],
  ['an empty object', {}],
  ['a list', []],
  ['a list of handles', { handles: ['/etc/passwd'] }],
  ['a million levels', deep(1_000_000)],
  ['a million levels for a field', { handle: deep(1_000_000) }],
  ['100 MB of text', 'x'.repeat(100 * 1024 * 1024)],
  ['100 MB for a field', { handle: 'x'.repeat(100 * 1024 * 1024) }],
  ['a list without end', { handles: Array.from({ length: 100_000 }, () => 'A'.repeat(32)) }],
  ['bytes', new Uint8Array(8)],
  ['a date', new Date(0)],
  ['a map', new Map([['handle', 'x']])],
  ['a function', () => 'x'],
  ['a symbol', Symbol('x')],
  ['a big number', 10n],
  ['an array with names', Object.assign([], { handle: 'x' })],
  ['the engine’s own names', JSON.parse('{"__proto__":{"handle":"x"},"constructor":{"prototype":{"x":1}}}')],
  ...ENGINE_NAMES.map((name) => [`the handle ${name}`, { handle: name }] as const),
];
