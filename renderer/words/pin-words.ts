import type { Pin } from '../../boards/document/connector';
import { signalOf } from '../../boards/signals/signals';

/** "power switch", "no pin here", "USB D−, port A": what a pin is said to be. */
export function pinWords(pin: Pin): string {
  if (pin.missing === true) return 'no pin here';
  const { name } = signalOf(pin.signal ?? 'unknown');
  const printed =
    pin.name !== undefined && pin.name !== '' && pin.name !== name ? `, printed ${pin.name}` : '';
  return `${name}${pin.channel === undefined ? '' : `, port\u00a0${pin.channel}`}${printed}`;
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
export function sourceWords(pin: Pin): string {
  if (!pin.source) return 'not said';
  const { kind, where } = pin.source;
  return where === undefined || where === '' ? SOURCE_WORDS[kind] : `${SOURCE_WORDS[kind]}: ${where}`;
}

/** A confidence from 0 to 1 in words. */
export function confidenceWords(confidence: number | undefined): string {
  if (confidence === undefined) return 'not said';
  if (confidence >= 0.95) return 'sure';
  if (confidence >= 0.75) return 'fairly sure';
  if (confidence >= 0.5) return 'likely';
  return 'a guess';
}
