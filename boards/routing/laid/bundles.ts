import { byIdentity } from '../../base/by-identity';
import { grouped } from '../../base/grouped';
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
  const lying = runs.flatMap((run) =>
    run.state.kind === 'laid' ? run.state.route.paths.map((path) => ({ path, run })) : [],
  );
  const along = grouped(lying, ({ path }) => path);
  return laying.paths
    .flatMap(({ id }): readonly Bundle[] => {
      const together = along.get(id)?.map(({ run }) => run) ?? [];
      if (together.length < 2) return [];
      const diameters = together.flatMap(({ lead }) => lead.cable?.diameterMm ?? []);
      return [{ path: id, runs: together, ...bundleDiameter(diameters) }];
    })
    .toSorted((a, b) => b.usualMm - a.usualMm);
});
