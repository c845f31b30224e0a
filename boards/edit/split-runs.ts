import type { LeadCable, Run } from '../document/cable';
import { type PlugRef, samePlug } from '../document/lookup';
import type { ChosenRoute } from '../document/route';

/** The runs of a cable, one of whose plugs has become several: each is the far end of a run of its own. */
export function splitRuns({ runs, ...cable }: LeadCable, plug: string, into: readonly string[]): LeadCable {
  const [first] = into;
  return {
    ...cable,
    runs: runs.flatMap((run): readonly Run[] => {
      const from = run.from === plug && first !== undefined ? { from: first } : {};
      return (run.to === plug ? into : [run.to]).map((to) => ({ ...run, ...from, to }));
    }),
  };
}

/** Chosen ways after the same: the run to each of the several takes the way that the one had. */
export function splitRoutes(
  routes: readonly ChosenRoute[],
  ref: PlugRef,
  into: readonly string[],
): readonly ChosenRoute[] {
  return routes.flatMap((route) =>
    samePlug(route, ref) ? into.map((plug) => ({ ...route, plug })) : [route],
  );
}
