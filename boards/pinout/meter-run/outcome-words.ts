import { percent } from '../../base/percent';
import type { Ohms, Volts } from '../../base/units';
import type { MeterQuestion, NextReading } from '../meter/identification';
import { lampWords, signalWords, touchWords } from '../meter/words';
import type { Outcome, Shown } from './outcomes';

const NBSP = '\u00a0';

/** "under 1 Ω", "8.2 to 12 kΩ", "open", "3.1 to 3.5 V", "It started": what a reading may show. */
export function shownWords(shown: Shown): string {
  switch (shown.kind) {
    case 'open':
      return 'Open';
    case 'ohms':
      return ohmsSpan(shown.fromOhms, shown.toOhms);
    case 'volts':
      return voltsSpan(shown.fromVolts, shown.toVolts);
    case 'answer':
      return answerWords(shown.answer);
  }
}

const ANSWERS: Readonly<Record<string, string>> = {
  joined: 'It beeps',
  apart: 'No beep',
  nothing: touchWords('nothing'),
  started: touchWords('started'),
  stopped: touchWords('stopped'),
  reset: touchWords('reset'),
  dark: lampWords('dark'),
  lit: lampWords('lit'),
  flickers: lampWords('flickers'),
};

/** An answer that is no number, as it is offered and told. */
export function answerWords(answer: string): string {
  return ANSWERS[answer] ?? answer;
}

/** "pin 9: ground (98 %)", "pin 3: power switch (60 %) or reset switch (40 %)". */
export function sayingWords({ pins }: Outcome): string {
  return pins
    .map(({ pin, signals }) => {
      const told = signals.map((one) => `${signalWords(one)} (${percent(one.chance)})`);
      return `pin${NBSP}${pin}: ${told.join(' or ')}`;
    })
    .join('; ');
}

/** Why this reading and no other, without a unit of information theory. */
export function whyWords({ gainBits, effort }: NextReading): string {
  const worth =
    gainBits >= 0.95
      ? `as much as ${tenths(gainBits)}${NBSP}yes-or-no answers`
      : `${Math.max(1, Math.round(gainBits * 100))}${NBSP}% of a yes-or-no answer`;
  const cost =
    effort <= 1
      ? 'one probe on an unplugged board'
      : `${tenths(effort)}${NBSP}times the work of a probe on an unplugged board`;
  return `It is expected to tell ${worth}, for ${cost}. No other safe reading tells more for its work.`;
}

/** The meter and what it is set to, as a mark beside a step. */
export function meterWords(question: MeterQuestion): string {
  switch (question.kind) {
    case 'ohms':
      return 'Meter on ohms';
    case 'volts':
      return 'Meter on DC volts';
    case 'continuity':
      return 'Meter on continuity';
    case 'touch':
      return 'Tip of a screwdriver';
    case 'lamp':
      return `LED with 1${NBSP}kΩ`;
  }
}

function tenths(value: number): string {
  return String(Number(value.toFixed(1)));
}

function two(value: number): string {
  return String(Number(value.toPrecision(2))).replace('-', '−');
}

function ohmsSpan(from: Ohms, to: Ohms): string {
  if (from === 0) return `Under ${inOhms(to)}`;
  const [least, most] = [inOhms(from), inOhms(to)];
  if (least === most) return most;
  const [number, unit] = least.split(NBSP);
  return most.endsWith(`${NBSP}${unit}`) ? `${number} to ${most}` : `${least} to ${most}`;
}

function inOhms(ohms: Ohms): string {
  if (ohms >= 1e6) return `${two(ohms / 1e6)}${NBSP}MΩ`;
  return ohms >= 1e3 ? `${two(ohms / 1e3)}${NBSP}kΩ` : `${two(ohms)}${NBSP}Ω`;
}

function voltsSpan(from: Volts, to: Volts): string {
  const [least, most] = [from.toFixed(1), to.toFixed(1)].map((text) =>
    text.replace('-', '−').replace(/^−0\.0$/, '0.0'),
  );
  return least === most ? `${most}${NBSP}V` : `${least} to ${most}${NBSP}V`;
}
