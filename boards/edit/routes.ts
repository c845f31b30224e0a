import type { Build } from '../document/build';
import { leadOf, type PlugRef, samePlug } from '../document/lookup';
import type { ChosenRoute } from '../document/route';

/** A build with these chosen ways; with none of them there is nothing to keep. */
export function withRoutes(build: Build, routes: readonly ChosenRoute[]): Build {
  const { routes: _, ...plain } = build;
  return routes.length === 0 ? plain : { ...plain, routes: [...routes] };
}

/** The way that was chosen for a run. */
export function chosenRoute(build: Build, ref: PlugRef): ChosenRoute | undefined {
  return build.routes?.find((route) => samePlug(route, ref));
}

/** The build without the ways of one lead whose runs are no longer there. */
export function withoutStrayRoutes(build: Build, lead: string): Build {
  const runs = leadOf(build, lead)?.cable?.runs ?? [];
  const { routes = [] } = build;
  const kept = routes.filter((route) => route.lead !== lead || runs.some(({ to }) => to === route.plug));
  return kept.length === routes.length ? build : withRoutes(build, kept);
}
