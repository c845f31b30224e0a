import type { Pin } from '../../document/connector';
import { LIMITS } from '../../document/limits';
import type { Identification, PinChances, SignalChance } from '../meter/identification';
import { signalWords } from '../meter/words';

/** How sure a guess is at most. */
const MOST_GUESSED = 0.5;
/** A meter never makes a pin more sure than that. */
const MOST_SURE = 0.99;
/** From which chance on what it could be as well is named beside it. */
const WORTH_NAMING = 0.02;
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
  found: Pick<Identification, 'pins' | 'layouts'>,
  readings: number,
  least: number,
): MeasuredPins {
  const from = `meter, ${readings}\u00a0${readings === 1 ? 'reading' : 'readings'}`;
  const measured: Pin[] = [];
  const guesses: Pin[] = [];
  for (const chances of found.pins) {
    const told = toldOf(chances, found);
    if (told === undefined) continue;
    const { signal, confidence, alike } = told;
    const isMeasured = confidence >= least;
    const where = alike === '' ? from : `${from}; ${alike}`;
    (isMeasured ? measured : guesses).push({
      pin: chances.pin,
      signal,
      source: { kind: isMeasured ? 'measured' : 'guessed', where: where.slice(0, LIMITS.textLength) },
      confidence: isMeasured ? confidence : Math.min(confidence, MOST_GUESSED),
    });
  }
  return { measured, guesses };
}

function toldOf({ pin, chances: [first] }: PinChances, { layouts }: Pick<Identification, 'layouts'>) {
  if (first === undefined || first.signal === 'unknown' || first.chance < LEAST_GUESS) return undefined;
  const chance = first.chance * shareAmongAlike(pin, first, layouts);
  // Down, never up to a certainty that the readings do not give.
  const confidence = Math.min(MOST_SURE, Math.floor(chance * 100) / 100);
  const alike = first.chance - chance < WORTH_NAMING ? '' : signalWords(first);
  return { signal: first.signal, confidence, alike };
}

/** How much of a chance is a signal's own, where no reading at the pin tells it from others: by the layouts it stands in. */
export function shareAmongAlike(
  pin: string,
  { signal, alike }: SignalChance,
  layouts: Identification['layouts'],
): number {
  if (alike.length === 0) return 1;
  let own = 0;
  let all = 0;
  for (const { chance, pins } of layouts) {
    const there = pins.find((each) => each.pin === pin)?.signal;
    if (there === signal) own += chance;
    if (there === signal || alike.some((other) => other === there)) all += chance;
  }
  // Where none of the layouts that are told has any of them, all are taken for as likely.
  return all > 0 ? own / all : 1 / (1 + alike.length);
}
