import type { Build } from '../../document/build';
import { asLaid, type LaidRun } from '../../routing/laid/as-laid';
import { endNames, runName } from '../../routing/laid/end-names';
import { layingOrder } from '../../routing/laid/order-of-laying';
import { STAGE_WORDS } from '../../routing/laid/order-words';
import { viaWords } from '../../routing/laid/remedy-words';
import { verdictOf } from '../../routing/laid/run-verdict';
import { verdictWords } from '../../routing/laid/run-words';
import { csvText } from '../csv';

/** A cable from end to end, as it stands in a list. Lengths in whole millimetres. */
export interface CableRow {
  readonly cable: string;
  readonly from: string;
  readonly to: string;
  readonly thickness: string;
  readonly length: string;
  readonly way: string;
  readonly wayLength: string;
  readonly inSight: string;
  readonly state: string;
  /** When it is laid. */
  readonly when: string;
}

/** The columns of the list in their order, and what stands over them. */
export const CABLE_COLUMNS: readonly (readonly [keyof CableRow, string])[] = [
  ['cable', 'Cable'],
  ['from', 'From'],
  ['to', 'To'],
  ['thickness', 'Thick, mm'],
  ['length', 'Long, mm'],
  ['way', 'Way'],
  ['wayLength', 'Way, mm'],
  ['inSight', 'In sight, mm'],
  ['state', 'State'],
  ['when', 'Laid'],
];

/** True where somebody has measured a cable on a tray: then there is something to list. */
export function hasCables(build: Build): boolean {
  return (asLaid(build)?.runs.length ?? 0) > 0;
}

/** Every measured cable: those that have a way in the order in which they are laid, then the others. */
export function cableRows(build: Build): readonly CableRow[] {
  const laid = asLaid(build);
  if (laid === undefined) return [];
  const row = (run: LaidRun, when: string): CableRow => {
    const [from, to] = endNames(build, run.lead, run.run);
    const { state } = run;
    const route = state.kind === 'laid' ? state.route : undefined;
    return {
      cable: runName(build, run.lead, run.run),
      from,
      to,
      thickness: String(run.lead.cable?.diameterMm ?? ''),
      length: String(Math.round(run.run.lengthMm)),
      way: route ? viaWords(build, route) : '',
      wayLength: route ? String(Math.round(route.totalMm)) : '',
      inSight: route ? String(Math.round(route.visibleMm)) : '',
      state: verdictWords(build, verdictOf(laid, run)),
      when,
    };
  };
  const ordered = (layingOrder(build) ?? []).flatMap(({ stage, turns }) =>
    turns.map(({ run }) => ({ run, when: STAGE_WORDS[stage] })),
  );
  const seen = new Set(ordered.map(({ run }) => run.id));
  const others = laid.runs.filter(({ id }) => !seen.has(id)).map((run) => ({ run, when: '' }));
  return [...ordered, ...others].map(({ run, when }) => row(run, when));
}

/** The cable list of a build as comma-separated values, its headings first. */
export function cableCsv(build: Build): string {
  const rows = cableRows(build).map((row) => CABLE_COLUMNS.map(([column]) => row[column]));
  return csvText([CABLE_COLUMNS.map(([, heading]) => heading), ...rows]);
}
