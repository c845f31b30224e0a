import type { Dice } from '../../boards/dice';

/** Pieces that mean something to one of the readers: of JSON, of text, of pictures, of tables. */
const PIECES: readonly Uint8Array[] = [
  ...[
    '{',
    '}',
    '[',
    ']',
    '"',
    ',',
    ':',
    '\\',
    '\\u0000',
    '\\ud800',
    '-',
    '.',
    '0',
    'e',
    '1e999',
    'null',
    '\n',
    '\r\n',
    '\t',
    '\u0000',
    '\uFEFF',
    '\u202E',
    '\u001b[2J',
    '[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[',
    '{"__proto__":{"x":1}}',
    'IHDR',
    'IEND',
    'RIFF',
    'VP8X',
    '<svg onload=x>',
    '1-4096',
  ].map((text) => new TextEncoder().encode(text)),
  // Not UTF-8: an overlong slash, a lone surrogate, a byte that never stands in it, a start without its rest.
  Uint8Array.of(0xc0, 0xaf),
  Uint8Array.of(0xed, 0xa0, 0x80),
  Uint8Array.of(0xff),
  Uint8Array.of(0xe2, 0x82),
  Uint8Array.of(0, 0, 0, 0),
  Uint8Array.of(0xff, 0xff, 0xff, 0xff),
  Uint8Array.of(0x7f, 0xff, 0xff, 0xff),
  Uint8Array.of(0xff, 0xd8, 0xff),
];

/** The file with up to four places damaged as disks, wires and strangers do it. */
export function damagedBytes(bytes: Uint8Array, other: Uint8Array, dice: Dice): Uint8Array {
  let damaged = bytes;
  for (let times = 1 + dice.below(4); times > 0; times--) damaged = once(damaged, other, dice);
  return damaged;
}

function once(bytes: Uint8Array, other: Uint8Array, dice: Dice): Uint8Array {
  const at = dice.below(bytes.length + 1);
  const end = Math.min(bytes.length, at + 1 + dice.below(dice.oneIn(4) ? bytes.length + 1 : 12));
  switch (dice.below(9)) {
    case 0: {
      const flipped = Uint8Array.from(bytes);
      if (at < flipped.length) flipped[at] = (flipped[at] ?? 0) ^ (1 << dice.below(8));
      return flipped;
    }
    case 1: {
      const other = Uint8Array.from(bytes);
      if (at < other.length) other[at] = dice.below(256);
      return other;
    }
    case 2:
      return joined(bytes.subarray(0, at), bytes.subarray(end));
    case 3:
      return joined(bytes.subarray(0, end), bytes.subarray(at));
    case 4:
      return bytes.subarray(0, at);
    case 5: {
      const from = dice.below(other.length + 1);
      return joined(
        bytes.subarray(0, at),
        other.subarray(from, from + dice.below(200)),
        bytes.subarray(dice.oneIn(2) ? at : end),
      );
    }
    case 6:
      return joined(bytes.subarray(end), bytes.subarray(0, end));
    default:
      return joined(
        bytes.subarray(0, at),
        dice.pick(PIECES) ?? bytes,
        bytes.subarray(dice.oneIn(2) ? at : end),
      );
  }
}

function joined(...parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let to = 0;
  for (const part of parts) {
    whole.set(part, to);
    to += part.length;
  }
  return whole;
}
