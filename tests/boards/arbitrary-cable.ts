import type { LeadCable } from '../../boards/document/cable';
import type { Lead } from '../../boards/document/lead';
import type { ChosenRoute } from '../../boards/document/route';
import type { Dice } from './dice';

/** Measures of a lead with these plugs: a run to each, from where it begins or from the plug before. */
export function cableFor(dice: Dice, plugs: readonly { readonly id: string }[]): LeadCable {
  return {
    diameterMm: 1 + dice.below(40) / 4,
    ...(dice.oneIn(2) && { bendRadiusMm: dice.below(60) }),
    slackMm: dice.below(60),
    ...(dice.oneIn(2) && { start: dice.pick(['supply', 'low', 'attic']) ?? 'supply' }),
    runs: plugs.map(({ id: to }, at) => {
      const before = at > 0 && dice.oneIn(2) ? plugs[at - 1]?.id : undefined;
      return { ...(before !== undefined && { from: before }), to, lengthMm: 50 + dice.below(900) };
    }),
  };
}

/** Ways chosen for some of the runs there are; the paths may be gone from the tray. */
export function routesFor(dice: Dice, leads: readonly Lead[], paths: readonly string[]): ChosenRoute[] {
  return leads.flatMap(({ id: lead, cable }) =>
    (cable?.runs ?? [])
      .filter(() => !dice.oneIn(4))
      .map(({ to: plug }) => ({
        lead,
        plug,
        paths: ['gone', ...paths].filter(() => dice.oneIn(3)),
        ...(dice.oneIn(3) && { pinned: true as const }),
      })),
  );
}
