import { byIdentity } from '../base/by-identity';
import type { Build } from '../document/build';
import { leadsOf, type PinRef } from '../document/lookup';
import { wiringOf } from '../fit/seated-plug';
import { contextOf } from './context';
import { type Finding, SEVERITIES } from './finding';
import { RULES } from './rules/index';

/** Stands for the tray of a case that has none. */
const NO_TRAY = {};

/** All of a build that the rules read: a new name, a note or a turn of the view is not among it. */
export function whatFindingsNeed(build: Build): readonly object[] {
  return [...wiringOf(build), build.board.outline, build.case.tray ?? NO_TRAY];
}

/**
 * Everything the rules find in a build: worst first, then by rule, then in the order of the leads. A
 * finding is left out when one at least as severe, about the same lead and one of the same pins, comes
 * from a rule that explains it: a plug on the wrong header is told once, not once more for each wire.
 * The same list for the same machine.
 */
export const findingsOf = byIdentity((build: Build): readonly Finding[] => {
  const context = contextOf(build);
  return unexplained(
    inOrder(
      build,
      RULES.flatMap((rule) => rule.check(context)),
    ),
  );
}, whatFindingsNeed);

const EXPLAINS = new Map(RULES.map(({ id, explains }) => [id, new Set(explains)]));
const RULE_ORDER = new Map(RULES.map(({ id }, index) => [id, index]));

function inOrder(build: Build, found: readonly Finding[]): readonly Finding[] {
  const leadOrder = new Map(leadsOf(build).map(({ id }, index) => [id, index]));
  const rank = ({ severity, code, leads: [lead = ''] }: Finding) => [
    SEVERITIES.indexOf(severity),
    RULE_ORDER.get(code) ?? 0,
    leadOrder.get(lead) ?? -1,
  ];
  return found
    .map((finding) => ({ finding, rank: rank(finding) }))
    .sort((a, b) => compare(a.rank, b.rank))
    .map(({ finding }) => finding);
}

function compare(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((each, index) => each !== b[index]);
  return at === -1 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}

/** Keeps what no kept finding explains. Worst first, so whatever could explain a finding came before it or is as severe. */
function unexplained(found: readonly Finding[]): readonly Finding[] {
  return found.filter(
    (finding) => !found.some((other) => other !== finding && isExplainedBy(finding, other)),
  );
}

function isExplainedBy(finding: Finding, other: Finding): boolean {
  return (
    EXPLAINS.get(other.code)?.has(finding.code) === true &&
    SEVERITIES.indexOf(other.severity) <= SEVERITIES.indexOf(finding.severity) &&
    finding.leads.some((lead) => other.leads.includes(lead)) &&
    meets(finding.pins, other.pins)
  );
}

/** Whether two lists share a pin. A finding without pins is about its lead as a whole. */
function meets(pins: readonly PinRef[], others: readonly PinRef[]): boolean {
  if (pins.length === 0) return true;
  return pins.some((pin) =>
    others.some((other) => other.connector === pin.connector && other.pin === pin.pin),
  );
}
