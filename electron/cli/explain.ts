import { analyse } from '../../boards/analyse';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { Build } from '../../boards/document/build';
import { nearestOf } from '../../boards/document/problem/nearest';
import type { Finding } from '../../boards/findings/finding';
import { RULES } from '../../boards/findings/rules/index';
import { wordsOf } from '../../boards/findings/words';
import { explainWords } from '../../boards/findings/words/explain';
import { type Paint, visible } from './terminal';

/** Which findings are to be explained: those of a code, or of one lead among them. */
export interface Wanted {
  readonly code: string;
  readonly lead?: string;
}

/** "reversed" or "reversed:power-led". */
export function wantedFrom(typed: string): Wanted {
  const colon = typed.indexOf(':');
  return colon < 0 ? { code: typed } : { code: typed.slice(0, colon), lead: typed.slice(colon + 1) };
}

/**
 * The wanted findings of a build with the way of the current in every state where something flows, or a
 * sentence that names what was probably meant.
 */
export function explanation(build: Build, wanted: Wanted, paint: Paint): Result<string, string> {
  const { findings } = analyse(build);
  const found = findings.filter(
    ({ code, leads }) => code === wanted.code && (wanted.lead === undefined || leads.includes(wanted.lead)),
  );
  if (found.length === 0) return refuse(notFound(findings, wanted));
  return ok(found.map((finding) => `${linesOf(build, finding, paint).join('\n')}\n`).join('\n'));
}

function linesOf(build: Build, finding: Finding, paint: Paint): readonly string[] {
  const { title, reason } = wordsOf(finding, build);
  const ways = explainWords(build, finding);
  return [
    `${paint(visible([finding.code, ...finding.leads].join(' ')), 'bold')}: ${visible(title)}`,
    `  ${visible(reason)}`,
    ...(ways.length === 0 ? ['', '  In no state of the machine does a current flow there.'] : []),
    ...ways.flatMap(({ when, head, steps }) => [
      '',
      `  ${paint(when, 'bold')}: ${visible(head)}`,
      ...steps.map((step, index) => `    ${index + 1}. ${visible(step)}`),
    ]),
  ];
}

function notFound(findings: readonly Finding[], { code, lead }: Wanted): string {
  const codes = [...new Set(findings.map((finding) => finding.code))];
  const named = lead === undefined ? code : `${code}:${lead}`;
  const leads = findings.filter((finding) => finding.code === code).flatMap((finding) => finding.leads);
  const near =
    leads.length > 0 && lead !== undefined
      ? nearLead(code, leads, lead)
      : (nearestOf(codes, code) ??
        nearestOf(
          RULES.map(({ id }) => id),
          code,
        ));
  const hint = near === undefined || near === code ? listing(codes) : `Perhaps “${near}” is meant.`;
  return `There is no finding “${named}”. ${hint}`;
}

function nearLead(code: string, leads: readonly string[], lead: string): string {
  return `${code}:${nearestOf(leads, lead) ?? leads[0]}`;
}

function listing(codes: readonly string[]): string {
  return codes.length === 0 ? 'Nothing was found at all.' : `Found are ${codes.join(', ')}.`;
}
