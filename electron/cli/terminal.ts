/** What would move the cursor, turn the writing round, or not be seen at all. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu;

/** Text out of a file, made safe to print: characters that are not for the eye are shown as their numbers. */
export function visible(text: string): string {
  return text.replace(UNSEEN, (character) => `\\u{${hex(character.codePointAt(0) ?? 0)}}`);
}

/** JSON that is safe to print, and means the same: such characters stand in it as JSON's own escapes. */
export function visibleJson(value: unknown): string {
  return JSON.stringify(value, null, 2).replace(UNSEEN, (character) =>
    character === '\n' ? character : escapeUnits(character),
  );
}

function escapeUnits(character: string): string {
  return character
    .split('')
    .map((unit) => `\\u${hex(unit.charCodeAt(0))}`)
    .join('');
}

function hex(code: number): string {
  return code.toString(16).padStart(4, '0');
}

/** Writes a word in a colour, or leaves it as it is. */
export type Paint = (word: string, colour: Colour) => string;
export type Colour = 'red' | 'yellow' | 'blue' | 'green' | 'bold';

const CODES: Readonly<Record<Colour, readonly [number, number]>> = {
  red: [31, 39],
  yellow: [33, 39],
  blue: [34, 39],
  green: [32, 39],
  bold: [1, 22],
};

/** Colours only where somebody looks on, and nobody has asked for none (no-color.org). */
export function paintFor(
  stream: { readonly isTTY?: boolean },
  env: Readonly<Record<string, string | undefined>>,
): Paint {
  if (stream.isTTY !== true || env.NO_COLOR || env.TERM === 'dumb') return (word) => word;
  return (word, colour) => {
    const [on, off] = CODES[colour];
    return `\u001b[${on}m${word}\u001b[${off}m`;
  };
}
