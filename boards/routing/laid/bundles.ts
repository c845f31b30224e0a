import { byIdentity } from '../../base/by-identity';
import type { Mm } from '../../base/units';
import { bundleDiameter } from '../fill/bundle';
import type { AsLaid, LaidRun } from './as-laid';

/** Runs that lie along one path of the tray together. */
export interface Bundle {
  readonly path: string;
  readonly runs: readonly LaidRun[];
  /** No bundle of them is thinner, as far as is known. */
  readonly leastMm: Mm;
  /** What to expect of one tied by hand. */
  readonly usualMm: Mm;
}

/** Every path that two runs or more lie along, the thickest bundle first. */
export const bundlesOf = byIdentity(({ laying, runs }: AsLaid): readonly Bundle[] => {
  const along = new Map<string, LaidRun[]>();
  for (const run of runs) {
    if (run.state.kind !== 'laid') continue;
    for (const path of run.state.route.paths) along.set(path, [...(along.get(path) ?? []), run]);
  }
  return laying.paths
    .flatMap(({ id }): readonly Bundle[] => {
      const together = along.get(id) ?? [];
      if (together.length < 2) return [];
      const diameters = together.flatMap(({ lead }) => lead.cable?.diameterMm ?? []);
      return [{ path: id, runs: together, ...bundleDiameter(diameters) }];
    })
    .toSorted((a, b) => b.usualMm - a.usualMm);
});
