import type { Build } from '../../../../boards/document/build';
import type { Lead } from '../../../../boards/document/lead';
import { leadsOf, type PlugRef } from '../../../../boards/document/lookup';
import type { Severity } from '../../../../boards/findings/finding';
import { type AsLaid, asLaid, type LaidRun } from '../../../../boards/routing/laid/as-laid';
import {
  CABLE_FAMILIES,
  type CableFamily,
  cableFamilyOf,
  isCap,
} from '../../../../boards/routing/laid/cable-family';
import { endNames, runName } from '../../../../boards/routing/laid/end-names';
import { runId } from '../../../../boards/routing/laid/laying-ids';
import { verdictOf } from '../../../../boards/routing/laid/run-verdict';
import { verdictWords } from '../../../../boards/routing/laid/run-words';
import { verdictSeverity } from '../../../words/cable-words';

/** One run as the shelf lists it, or a lead that nobody has measured. */
export interface CableRow {
  readonly key: string;
  readonly plug: PlugRef;
  readonly name: string;
  /** Both ends. */
  readonly ends: string;
  readonly words: string;
  readonly severity: Severity | undefined;
}

export interface CableGroup {
  readonly family: CableFamily;
  readonly rows: readonly CableRow[];
}

/** Every lead that has to be laid, by what it carries; a cap has no way to go. */
export function cableGroups(build: Build): readonly CableGroup[] {
  const laid = asLaid(build);
  const leads = leadsOf(build).filter((lead) => lead.setAside === undefined && !isCap(lead));
  const runs = new Map((laid?.runs ?? []).map((run) => [run.id, run]));
  return CABLE_FAMILIES.map((family) => ({
    family,
    rows: leads
      .filter((lead) => cableFamilyOf(build, lead) === family)
      .flatMap((lead) => rowsOf(build, laid, lead, runs)),
  })).filter(({ rows }) => rows.length > 0);
}

function rowsOf(
  build: Build,
  laid: AsLaid | undefined,
  lead: Lead,
  runs: ReadonlyMap<string, LaidRun>,
): readonly CableRow[] {
  if (lead.cable === undefined || laid === undefined) {
    const [plug] = lead.plugs;
    if (plug === undefined) return [];
    const ref = { lead: lead.id, plug: plug.id };
    return [
      { key: runId(ref), plug: ref, name: lead.name, ends: '', words: 'not measured', severity: undefined },
    ];
  }
  return lead.cable.runs.flatMap((run): readonly CableRow[] => {
    const plug = { lead: lead.id, plug: run.to };
    const found = runs.get(runId(plug));
    if (found === undefined) return [];
    const verdict = verdictOf(laid, found);
    return [
      {
        key: runId(plug),
        plug,
        name: runName(build, lead, run),
        ends: endNames(build, lead, run).join(' to '),
        words: verdictWords(build, verdict),
        severity: verdictSeverity(verdict),
      },
    ];
  });
}
