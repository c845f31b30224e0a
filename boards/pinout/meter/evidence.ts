import type { PinReading } from '../../document/pin-reading';
import { mayBeMisread } from '../../inference/belief';
import { ohmBand, voltBand } from './bands';
import type { MeterQuestion } from './identification';
import { PAIR_ANSWERS, type Pair, pairAnswers } from './pair-answers';
import { pinKinds } from './pin-kinds';
import { bandsWithin, type Single, singleAnswers } from './single-answers';

/** The chance that a reading was misread where the sheet says nothing of it (common practice, no source). */
export const USUAL_DOUBT = 0.05;

/**
 * Nobody reads without any doubt: at 0 one slip would rule out every layout for good, and a second reading like
 * it would leave nothing to reckon with (common practice, no source).
 */
const LEAST_DOUBT = 1e-6;

/** A repeat shares the board, the probes and the eye with the first: it counts half (common practice, no source). */
const REPEAT = 0.5;

export type AskedReading =
  | { readonly single: Single; readonly pin: string }
  | { readonly pair: Pair; readonly pins: readonly [string, string] };

/** What was asked by a reading or is asked by a question. */
export function askedBy(question: MeterQuestion | PinReading): AskedReading {
  switch (question.kind) {
    case 'ohms':
      return { single: 'ohms', pin: question.pin };
    case 'volts':
      return { single: question.supply, pin: question.pin };
    case 'continuity':
      return { pair: 'continuity', pins: question.pins };
    case 'touch':
      return { pair: `touch-${question.supply}`, pins: question.pins };
    case 'lamp':
      return { pair: `lamp-${question.supply}`, pins: [question.plus, question.minus] };
  }
}

/** The same for a question and for every repeat of it; the order of two pins counts for the LED tester only. */
export function askedKey(asked: AskedReading): string {
  if ('single' in asked) return `${asked.single} ${asked.pin}`;
  const pins = asked.pair.startsWith('lamp') ? asked.pins : [...asked.pins].sort();
  return `${asked.pair} ${pins.join(' ')}`;
}

/** The chance of a reading under each kind of pin, or under each two kinds at [first × kinds + second]. */
export function likelihoods(reading: PinReading): Float64Array {
  const asked = askedBy(reading);
  const table = 'single' in asked ? singleAnswers(asked.single) : pairAnswers(asked.pair);
  const share = shareOf(reading, 'single' in asked ? asked.single : asked.pair);
  const general = share(table.inGeneral);
  const doubt = Math.max(LEAST_DOUBT, reading.doubt ?? USUAL_DOUBT);
  return Float64Array.from(table.rows, (row) => mayBeMisread(share(row), general, doubt));
}

/** How much of a row of answers lies where the reading is, within its tolerance. */
export function shareOf(reading: PinReading, asked: Single | Pair): (row: Float64Array) => number {
  const answer = answerIndex(reading, asked);
  const wide = reachOf(reading);
  if (wide === 0) return (row) => row[answer] ?? 0;
  return (row) => {
    const first = Math.max(0, answer - wide);
    const last = Math.min(row.length - 1, answer + wide);
    let sum = 0;
    for (let at = first; at <= last; at++) sum += row[at] ?? 0;
    return sum / (last - first + 1);
  };
}

/** How many bands to either side the tolerance of a reading reaches beyond the usual. */
function reachOf(reading: PinReading): number {
  if (reading.kind === 'volts') return bandsWithin(reading.supply, reading.volts, reading.tolerance ?? 0);
  if (reading.kind !== 'ohms' || reading.ohms === 'open') return 0;
  return bandsWithin('ohms', reading.ohms, reading.tolerance ?? 0);
}

function answerIndex(reading: PinReading, asked: Single | Pair): number {
  switch (reading.kind) {
    case 'ohms':
      return ohmBand(reading.ohms);
    case 'volts':
      return voltBand(reading.volts);
    case 'continuity':
      return answersTo(asked).indexOf(reading.joined ? 'joined' : 'apart');
    case 'touch':
      return answersTo(asked).indexOf(reading.did);
    case 'lamp':
      return answersTo(asked).indexOf(reading.showed);
  }
}

function answersTo(asked: Single | Pair): readonly string[] {
  return asked === 'ohms' || asked === 'standby' || asked === 'running' ? [] : PAIR_ANSWERS[asked];
}

/** All readings of one question as one: logarithms of what they say together, each repeat for its share. */
export function together(readings: readonly PinReading[]): Float64Array {
  const many = readings.length;
  const each = many === 0 ? 0 : (1 + REPEAT * (many - 1)) / many;
  const size = readings[0] && 'pair' in askedBy(readings[0]) ? pinKinds().length ** 2 : pinKinds().length;
  const logs = new Float64Array(size);
  for (const reading of readings)
    likelihoods(reading).forEach((chance, at) => {
      logs[at] = (logs[at] ?? 0) + each * Math.log(chance);
    });
  return logs;
}
