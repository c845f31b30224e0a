import { type MeaningId, meaningOf, type Said } from './meanings';
import { jobOf, type Settling } from './settling';

/**
 * Pins whose words are alike and say too little: the sign is missing, or there is nothing but the sign.
 * The order in which real headers set them: plus before minus, the input of a switch before its ground,
 * 5 V at the end of the speaker where pin 1 is. Common practice, no source, and so always a guess.
 */
export function settleTwins(pins: readonly Settling[]): readonly Settling[] {
  return switches(speakers(lamps(loneSigns(pins))));
}

function guess(pin: Settling, said: Said | undefined): Settling {
  return said === undefined ? pin : { ...pin, said, by: 'guess' };
}

/** A bare "+" or "-" belongs to the pin named last that still lacks its other side. */
function loneSigns(pins: readonly Settling[]): readonly Settling[] {
  let last: MeaningId | undefined;
  return pins.map((pin) => {
    const { meant } = pin;
    if (meant?.means !== 'some-sign') {
      if (meant && meaningOf(meant.means).minus) last = meant.means;
      return pin;
    }
    const said = last && meant.sign && meaningOf(last)[meant.sign];
    return pins.some((other) => other.said === said && other !== pin) ? pin : guess(pin, said);
  });
}

/** LED words without a sign. Beside a sign the other one is left; two of them are plus and minus; one is fed. */
function lamps(pins: readonly Settling[]): readonly Settling[] {
  const bare = pins.filter(
    ({ meant, said }) => said === undefined && meant && !meant.sign && isPair(meant.means),
  );
  if (bare.length === 0) return pins;
  const all = new Set(pins.map(({ said }) => said));
  const among = new Set(bare);
  const common = hasCommonFeed(all);
  return pins.map((pin) => {
    if (!among.has(pin) || !pin.meant) return pin;
    const { means } = pin.meant;
    const { plus, minus } = meaningOf(means);
    if (all.has(plus) !== all.has(minus)) return guess(pin, all.has(plus) ? minus : plus);
    const alike = bare.filter(({ meant }) => meant?.means === means);
    if (alike.length === 2) return guess(pin, alike[0] === pin ? plus : minus);
    return alike.length > 2 ? pin : guess(pin, common ? minus : plus);
  });
}

/** LEDs that share one supply are switched on their other side. */
function hasCommonFeed(all: ReadonlySet<Said | undefined>): boolean {
  return (all.has('supply-5v') || all.has('supply-3v3')) && !all.has('ground');
}

function isPair(means: MeaningId): boolean {
  const { bare, plus, minus } = meaningOf(means);
  return bare === undefined && plus !== undefined && minus !== undefined;
}

/** Several pins that are all called speaker: the outer two are used. */
function speakers(pins: readonly Settling[]): readonly Settling[] {
  const bare = pins.filter(({ meant }) => meant?.means === 'speaker' && !meant.sign);
  if (bare.length < 2 || pins.some(({ said }) => said === 'speaker-feed')) return pins;
  return pins.map((pin) => {
    if (pin === bare[0]) return guess(pin, 'speaker-feed');
    return bare.includes(pin) && pin !== bare.at(-1) ? guess(pin, 'no-connection') : pin;
  });
}

/** A switch named at both of its pins: it works either way round, and one of them is ground. */
function switches(pins: readonly Settling[]): readonly Settling[] {
  return pins.map((pin) => {
    const { meant } = pin;
    if (!meant || meant.sign || !meaningOf(meant.means).minus?.startsWith('ground of ')) return pin;
    const alike = pins.filter((other) => other.meant?.means === meant.means);
    const [first, second] = alike;
    const signed = alike.some((other) => other.meant?.sign);
    if (alike.length !== 2 || signed || pin !== second || jobOf(first?.said) === undefined) return pin;
    return guess(pin, meaningOf(meant.means).minus);
  });
}
