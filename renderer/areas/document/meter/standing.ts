import { percent } from '../../../../boards/base/percent';
import type { Identification, PinChances } from '../../../../boards/pinout/meter/identification';
import { shareAmongAlike } from '../../../../boards/pinout/meter-run/measured-pins';
import { signalOf } from '../../../../boards/signals/signals';

/** How far a pin is told: beyond doubt, more likely than not, or not. */
export type Standing = 'certain' | 'likely' | 'open';

const CERTAIN = 0.98;
const LIKELY = 0.75;

/** The pin must also be told from those signals that look alike to a meter. */
export function standingOf(
  { pin, chances: [first], certain }: PinChances,
  layouts: Identification['layouts'],
): Standing {
  if (first === undefined) return 'open';
  const chance = first.chance * shareAmongAlike(pin, first, layouts);
  if (certain && chance >= CERTAIN) return 'certain';
  return chance >= LIKELY ? 'likely' : 'open';
}

/** "98 %", "over 99 %": a chance where there is little room, never as a certainty. */
export function roughPercent(chance: number): string {
  return chance >= 0.995 ? 'over 99\u00a0%' : percent(chance);
}

/** "Pin 6, power switch, 98 %, certain": a pin of the drawing, for the ear. */
export function pinChanceWords(pin: PinChances, standing: Standing): string {
  const [first] = pin.chances;
  const told = first ? `${signalOf(first.signal).name}, ${percent(first.chance)}` : 'nothing is known';
  return `Pin\u00a0${pin.pin}, ${told}, ${standing}`;
}
