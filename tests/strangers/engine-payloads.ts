import { ENGINE_NAMES } from './hostile-texts';

/** Files, edits and pastes in which names of the engine are tried: so many of each. */
export const PAYLOADS = 1_000;

const MARK = '{"polluted":1}';

/**
 * Members of an object in JSON that change what all objects share, wherever code copies them entry by entry, or takes
 * one of their names for a way: each name by itself, within itself, and the ways to a prototype with something new or
 * something known in it.
 */
export const PAYLOAD_MEMBERS: readonly string[] = [
  ...ENGINE_NAMES.flatMap((name) => [`"${name}":${MARK}`, `"${name}":{"${name}":${MARK}}`, `"${name}":null`]),
  `"constructor":{"prototype":${MARK}}`,
  ...['{"toString":"polluted"}', '{"hasOwnProperty":null}', '{"constructor":{"polluted":1}}'].flatMap(
    (inner) => [
      `"constructor":{"prototype":${inner}}`,
      `"__proto__":${inner}`,
      `"__proto__":{"constructor":{"prototype":${inner}}}`,
      `"constructor":{"constructor":{"prototype":${inner}}}`,
      `"constructor":{"prototype":{"__proto__":${inner}}}`,
    ],
  ),
];

/** The payload of a number; all of them come in turn. */
export function memberAt(at: number): string {
  return PAYLOAD_MEMBERS[at % PAYLOAD_MEMBERS.length] ?? MARK;
}

/** A text of JSON with a payload within one of its objects: another one for each number. */
export function withPayload(json: string, at: number): string {
  const braces = [...json.matchAll(/\{(?=\s*")/g)].map(({ index }) => index);
  const brace = braces[(at * 7_919) % braces.length] ?? 0;
  return `${json.slice(0, brace + 1)}${memberAt(at)},${json.slice(brace + 1)}`;
}
