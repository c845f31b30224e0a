import { SEVERITIES, type Severity } from '../../boards/findings/finding';
import { counted } from './list-words';

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  danger: 'Danger',
  fault: 'Fault',
  doubt: 'Doubt',
  note: 'Note',
};

/** What each severity means, for the legend and for screen readers. */
export const SEVERITY_MEANINGS: Readonly<Record<Severity, string>> = {
  danger: 'can damage something',
  fault: 'will not work',
  doubt: 'look again',
  note: 'good to know',
};

/** "1 danger, 2 doubts"; "nothing found" when there is none. */
export function countsWords(findings: readonly { readonly severity: Severity }[]): string {
  const parts = SEVERITIES.flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [counted(count, severity)];
  });
  return parts.length === 0 ? 'nothing found' : parts.join(', ');
}

/** The worse of two severities, for the one sign that stands for several. */
export function worst(findings: readonly { readonly severity: Severity }[]): Severity | null {
  return SEVERITIES.find((severity) => findings.some((finding) => finding.severity === severity)) ?? null;
}
