import { leadsOf, type PlugRef } from '../../../boards/document/lookup';
import { cableFor } from '../arbitrary-cable';
import type { Makers, Situation } from './situation';

/** The rows of commands that measure leads and lay them in the tray. */
export const CABLE_MAKERS: Makers<'measure-lead' | 'lay-runs' | 'pin-run'> = {
  'measure-lead': ({ build, dice }) => {
    const lead = dice.pick(leadsOf(build));
    if (lead === undefined) return undefined;
    const wrong = dice.oneIn(20) ? [...lead.plugs, ...lead.plugs] : lead.plugs;
    return { lead: lead.id, cable: dice.oneIn(6) ? null : cableFor(dice, wrong) };
  },
  'lay-runs': (given) => {
    const { build, dice } = given;
    const paths = build.case.tray?.paths ?? [];
    const runs = runsOf(given);
    if (runs.length === 0) return undefined;
    const off = runs.filter(() => dice.oneIn(4));
    return {
      off: dice.oneIn(20) ? runs : off,
      routes: runs
        .filter((run) => !off.includes(run))
        .map((run) => ({
          ...run,
          paths: dice.oneIn(40) ? ['gone'] : paths.filter(() => dice.oneIn(3)).map(({ id }) => id),
          ...(dice.oneIn(3) && { pinned: true as const }),
        })),
    };
  },
  'pin-run': ({ build, dice }) => {
    const route = dice.pick(build.routes ?? []);
    return route && { lead: route.lead, plug: route.plug, pinned: !dice.oneIn(3) };
  },
};

function runsOf({ build }: Situation): PlugRef[] {
  return leadsOf(build).flatMap(({ id, cable }) =>
    (cable?.runs ?? []).map(({ to }) => ({ lead: id, plug: to })),
  );
}
