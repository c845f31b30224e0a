import { type FanRating, LINE_RATES_GBPS, type Rating, SPEED_MODES } from '../../boards/document/rating';
import type { Dice } from './dice';

/** What a manual may say of a connector. */
export function ratingFor(dice: Dice): Rating {
  return {
    ...(dice.oneIn(2) && { amps: 0.5 + dice.below(4) / 2 }),
    ...(dice.oneIn(2) && { fanModes: SPEED_MODES.filter(() => dice.oneIn(2)) }),
    ...(dice.oneIn(4) && { watched: true as const }),
    ...(dice.oneIn(3) && { lineRateGbps: dice.pick(LINE_RATES_GBPS) ?? 6 }),
    ...(dice.oneIn(4) && { offWith: ['place-0'] }),
  };
}

/** What a label may say of a fan. */
export function fanRatingFor(dice: Dice): FanRating {
  const runningAmps = 0.1 + dice.below(4) / 10;
  return {
    runningAmps,
    startAmps: 2 * runningAmps,
    cools: dice.pick(['processor', 'case'] as const) ?? 'case',
  };
}
