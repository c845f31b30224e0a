import type { Meanings } from './understood';

interface Read {
  readonly meanings: Meanings;
}

/**
 * "VCC3" is the 3.3 V rail, and on a header for ports 3 and 4 the supply of port 3, as "VCC4" beside it is that
 * of port 4: the data lines of a port 3 tell. Takes the words of a list, with how each is written.
 */
export function withSupplyOfPort3<T extends Read>(
  pins: readonly T[],
  wordOf: (pin: T) => string,
): readonly T[] {
  const ported = pins.some(({ meanings: [first] }) => first?.means === 'usb-data' && first.port === '3');
  if (!ported) return pins;
  return pins.map((pin) =>
    pin.meanings[0]?.means === '3v3' && SHORT.test(wordOf(pin))
      ? { ...pin, meanings: [{ means: 'some-supply', port: '3', how: 'normalised' }, ...pin.meanings] }
      : pin,
  );
}

const SHORT = /^\s*\+?\s*V(?:CC|DD)[ _-]?3\s*$/i;
