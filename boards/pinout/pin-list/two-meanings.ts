import { MEANINGS, type MeaningId, meaningOf, type Said } from './meanings';
import type { Understood } from './understood';

/** Nothing of the board is joined to such a pin, or nobody says what. */
const EMPTY: ReadonlySet<MeaningId> = new Set(['key', 'no-connection', 'reserved']);

/** What supplies are at; a word for the port says the same as one for the voltage. */
const SUPPLY_VOLTS: Partial<Readonly<Record<MeaningId, number>>> = {
  '3v3': 3.3,
  '5v': 5,
  '5v-standby': 5,
  'usb-supply': 5,
  'usb3-supply': 5,
  'usbc-supply': 5,
  'audio-supply': 5,
  '12v': 12,
  'fan-supply': 12,
  'minus-5v': -5,
  'minus-12v': -12,
};

/** A meaning that only its neighbours can settle, which goes with any other. */
export function isOpen(means: MeaningId): boolean {
  return Object.keys(MEANINGS[means]).length === 0;
}

/** Whether two words of one place cannot both be meant: "KEY 5VSB", "PLED+ HDLED+". */
export function differ(one: Understood, other: Understood): boolean {
  if (isOpen(one.means) || isOpen(other.means)) return false;
  if (EMPTY.has(one.means) && EMPTY.has(other.means)) return false;
  if (one.means === other.means)
    return one.sign !== undefined && other.sign !== undefined && one.sign !== other.sign;
  const [a, b] = [saidOf(one), saidOf(other)];
  if (a === b || (isGround(a) && isGround(b))) return false;
  const volts = voltsOf(one);
  const standby = (one.means === '5v-standby') !== (other.means === '5v-standby');
  return volts === undefined || volts !== voltsOf(other) || standby;
}

/** Whether what explains a word takes it back: no pin or a supply, ground or a supply, two voltages. */
export function takesBack(one: Understood, other: Understood): boolean {
  if (!differ(one, other) || one.means === 'elsewhere' || other.means === 'elsewhere') return false;
  if (EMPTY.has(one.means) || EMPTY.has(other.means)) return true;
  const rails = [one, other].map((each) => (isGround(saidOf(each)) ? 0 : voltsOf(each)));
  return rails[0] !== undefined && rails[1] !== undefined && rails[0] !== rails[1];
}

/** "NC / reserved / over-current": a pin that only some boards use, and no board for a supply. */
export function mayBeUnused([first, ...others]: readonly Understood[]): boolean {
  const unused = first?.means === 'no-connection' || first?.means === 'reserved';
  return unused && others.every((other) => other.means !== 'key' && voltsOf(other) === undefined);
}

/** The same meanings as a doubt: none of them stands before the others. */
export function asDoubt(meanings: readonly Understood[]): readonly Understood[] {
  return meanings.map((one) => ({ ...one, how: 'twofold' }));
}

function voltsOf({ means, sign }: Understood): number | undefined {
  const volts = SUPPLY_VOLTS[means];
  return volts !== undefined && volts > 0 && sign === 'minus' ? -volts : volts;
}

function saidOf({ means, sign }: Understood): Said | undefined {
  return meaningOf(means)[sign ?? 'bare'];
}

function isGround(said: Said | undefined): boolean {
  return said === 'ground' || said?.startsWith('ground of ') === true;
}
