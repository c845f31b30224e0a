import { jobName } from '../signals/job-names';
import { signalOf } from '../signals/signals';
import type { Alternative, Pin } from './connector';
import { contradictions, LEAST, type Sureness } from './sureness';

/** "power switch", "no pin here", "ground, for reset", "USB D−, port A, printed D2-": what a pin is said to be. */
export function pinWords(pin: Pin): string {
  if (pin.missing === true) return 'no pin here';
  const { name } = signalOf(pin.signal ?? 'unknown');
  const said = (words: string, text: string | undefined) =>
    text === undefined || text === '' || text === name ? '' : `, ${words} ${text}`;
  const called = pin.name === pin.print ? '' : said('called', pin.name);
  return `${name}${ownerWords(pin)}${portWords(pin)}${said('printed', pin.print)}${called}`;
}

/** ", for reset": the job that a ground or an unused pin is there for. */
export function ownerWords({ belongsTo }: Pick<Pin, 'belongsTo'>): string {
  return belongsTo === undefined ? '' : `, for ${jobName(belongsTo)}`;
}

function portWords({ channel }: Pick<Pin, 'channel'>): string {
  return channel === undefined ? '' : `, port\u00a0${channel}`;
}

/** "manual, page 12: +5 V": what another source says of a pin. */
export function alternativeWords(alternative: Alternative): string {
  return `${sourceWords(alternative)}: ${claimWords(alternative)}`;
}

/** "+5 V, port A", "no pin there": what it says, without who says it. */
export function claimWords(alternative: Alternative): string {
  if (alternative.missing) return 'no pin there';
  return `${signalOf(alternative.signal).name}${portWords(alternative)}`;
}

/** "manual says +5 V" for a pin of which other sources say otherwise; nothing where none does. */
export function contradictionWords(pin: Pin): string {
  return contradictions(pin)
    .map((other) => `${SOURCE_WORDS[other.source.kind]} says ${claimWords(other)}`)
    .join(', ');
}

export const SOURCE_WORDS = {
  standard: 'standard',
  manual: 'manual',
  print: 'printed on the board',
  measured: 'measured',
  guessed: 'guessed',
} as const satisfies Record<NonNullable<Pin['source']>['kind'], string>;

/** "manual"; "not said" where nobody wrote it down. */
export function sourceKindWords(pin: Pin): string {
  return pin.source ? SOURCE_WORDS[pin.source.kind] : 'not said';
}

/** "manual, page 12"; "not said" where nobody wrote it down. */
export function sourceWords(pin: Pin | Alternative): string {
  if (!pin.source) return 'not said';
  const { kind, where } = pin.source;
  return where === undefined || where === '' ? SOURCE_WORDS[kind] : `${SOURCE_WORDS[kind]}: ${where}`;
}

/** A confidence from 0 to 1 in words. */
export function confidenceWords(confidence: number | undefined): string {
  if (confidence === undefined) return 'not said';
  if (confidence >= LEAST.sure) return 'sure';
  if (confidence >= LEAST.fairly) return 'fairly sure';
  if (confidence >= LEAST.likely) return 'likely';
  return 'a guess';
}

export const SURENESS_WORDS = {
  unknown: 'not known',
  guessed: 'a guess',
  likely: 'likely',
  unsaid: 'not said how sure',
  fairly: 'fairly sure',
  sure: 'sure',
} as const satisfies Record<Sureness, string>;
