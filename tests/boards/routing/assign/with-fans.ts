import type { Build } from '../../../../boards/document/build';
import { makeLead } from '../../../../boards/library/make-lead';
import type { Bench } from '../../findings/harness';

/** The bench with case fans of 0.3 A, 0.5 A at the start, by their ids; each on a connector, or beside the board. */
export function withFans(build: Bench, on: Readonly<Record<string, string | undefined>>): Build {
  const fan = { runningAmps: 0.3, startAmps: 0.5, cools: 'case' as const };
  return Object.entries(on).reduce((so, [id, outlet]) => {
    const lead = makeLead('fan-1x4', { id, name: id.toUpperCase() });
    const fitted = so.lead('fan-1x4', id, { parts: lead.parts.map((part) => ({ ...part, fan })) });
    return outlet === undefined ? fitted : fitted.seat(id, outlet, '1');
  }, build).build;
}
