import type { Pin } from '../../document/connector';
import { LIMITS } from '../../document/limits';
import type { Identification, PinChances } from '../meter/identification';
import { signalWords } from '../meter/words';

/** How sure a guess is at most, and a pin whose signal no reading tells from another. */
const MOST_ALIKE = 0.5;
/** A meter never makes a pin more sure than that. */
const MOST_SURE = 0.99;
/** Below it a guess is not worth writing down. */
const LEAST_GUESS = 0.05;

export interface MeasuredPins {
  /** Pins told by at least the wanted chance. */
  readonly measured: readonly Pin[];
  /** The rest, as guesses. */
  readonly guesses: readonly Pin[];
}

/**
 * What the readings tell of the pins, as it is written into a sheet.
 *
 * @param least chance from which on a pin counts as measured, from 0 to 1
 * @param readings how many readings that rests on
 */
export function measuredPins(
  { pins }: Pick<Identification, 'pins'>,
  readings: number,
  least: number,
): MeasuredPins {
  const from = `meter, ${readings}\u00a0${readings === 1 ? 'reading' : 'readings'}`;
  const measured: Pin[] = [];
  const guesses: Pin[] = [];
  for (const chances of pins) {
    const told = toldOf(chances);
    if (told === undefined) continue;
    const { signal, confidence, alike } = told;
    const isMeasured = confidence >= least;
    const where = alike === '' ? from : `${from}; ${alike}`;
    (isMeasured ? measured : guesses).push({
      pin: chances.pin,
      signal,
      source: { kind: isMeasured ? 'measured' : 'guessed', where: where.slice(0, LIMITS.textLength) },
      confidence: isMeasured ? confidence : Math.min(confidence, MOST_ALIKE),
    });
  }
  return { measured, guesses };
}

function toldOf({ chances: [first] }: PinChances) {
  if (first === undefined || first.signal === 'unknown' || first.chance < LEAST_GUESS) return undefined;
  // Down, never up to a certainty that the readings do not give.
  const chance = Math.min(MOST_SURE, Math.floor(first.chance * 100) / 100);
  if (first.alike.length === 0) return { signal: first.signal, confidence: chance, alike: '' };
  return { signal: first.signal, confidence: Math.min(chance, MOST_ALIKE), alike: signalWords(first) };
}
