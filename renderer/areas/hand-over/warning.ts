import type { Finding, Severity } from '../../../boards/findings/finding';
import { counted } from '../../words/list-words';

/** What has to be said before the first step: that the checks name dangers or faults; null where they do not. */
export function warningOf(
  findings: readonly Finding[],
): { readonly severity: Severity; readonly words: string } | null {
  const dangers = count(findings, 'danger');
  const faults = count(findings, 'fault');
  if (dangers + faults === 0) return null;
  const parts = [
    ...(dangers > 0 ? [counted(dangers, 'danger')] : []),
    ...(faults > 0 ? [counted(faults, 'fault')] : []),
  ];
  return {
    severity: dangers > 0 ? 'danger' : 'fault',
    words: `The wiring has ${parts.join(' and ')}. Look at Wire first: these steps would build them in.`,
  };
}

function count(findings: readonly Finding[], severity: Severity): number {
  return findings.filter((finding) => finding.severity === severity).length;
}
