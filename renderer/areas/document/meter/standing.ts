import type { PinChances } from '../../../../boards/pinout/meter/identification';
import { percent } from '../../../../boards/pinout/meter/words';
import { signalOf } from '../../../../boards/signals/signals';

/** How far a pin is told: beyond doubt, more likely than not, or not. */
export type Standing = 'certain' | 'likely' | 'open';

const LIKELY = 0.75;

export function standingOf({ chances: [first], certain }: PinChances): Standing {
  if (certain && certain.alike.length === 0) return 'certain';
  return first && first.chance >= LIKELY ? 'likely' : 'open';
}

/** "Pin 6, power switch, 98 %, certain": a pin of the drawing, for the ear. */
export function pinChanceWords(pin: PinChances): string {
  const [first] = pin.chances;
  const told = first ? `${signalOf(first.signal).name}, ${percent(first.chance)}` : 'nothing is known';
  return `Pin\u00a0${pin.pin}, ${told}, ${standingOf(pin)}`;
}
