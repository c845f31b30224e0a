import { LAMP_RESULTS, type PinReading, POWERED, TOUCH_RESULTS } from '../../boards/document/pin-reading';
import type { Dice } from './dice';

/** Any reading on a connector with these pins; between two pins only where there are two. */
export function readingFor(labels: readonly string[], dice: Dice): PinReading | undefined {
  const pin = dice.pick(labels);
  if (pin === undefined) return undefined;
  const supply = dice.pick(POWERED) ?? 'standby';
  const doubt = dice.oneIn(4) ? { doubt: dice.below(101) / 100 } : {};
  const tolerance = dice.oneIn(4) ? { tolerance: dice.below(50) / 100 } : {};
  const other = dice.pick(labels.filter((label) => label !== pin));
  switch (other === undefined ? dice.below(2) : dice.below(5)) {
    case 0:
      return {
        kind: 'ohms',
        pin,
        ohms: dice.oneIn(4) ? 'open' : dice.below(1e6) / 10,
        ...tolerance,
        ...doubt,
      };
    case 1:
      return { kind: 'volts', pin, supply, volts: dice.below(240) / 10 - 12, ...tolerance, ...doubt };
    case 2:
      return { kind: 'continuity', pins: [pin, other ?? pin], joined: dice.oneIn(2), ...doubt };
    case 3:
      return {
        kind: 'touch',
        pins: [pin, other ?? pin],
        supply,
        did: dice.pick(TOUCH_RESULTS) ?? 'nothing',
        ...doubt,
      };
    default:
      return {
        kind: 'lamp',
        plus: pin,
        minus: other ?? pin,
        supply,
        showed: dice.pick(LAMP_RESULTS) ?? 'dark',
        ...doubt,
      };
  }
}
