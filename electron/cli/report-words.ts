import { SEVERITIES, type Severity } from '../../boards/findings/finding';
import type { FileReport } from './check-report';
import { type Colour, type Paint, visible } from './terminal';

type Checked = Extract<FileReport, { outcome: 'checked' }>;
type Found = Checked['findings'][number];

const COLOURS: Readonly<Record<Severity, Colour>> = {
  danger: 'red',
  fault: 'red',
  doubt: 'yellow',
  note: 'blue',
};
const KIND_WORDS = { build: 'build', board: 'board sheet', case: 'case sheet' } as const;

/** What was found in one file, for people to read; ends with a line break. */
export function reportText(report: FileReport, paint: Paint): string {
  return `${linesOf(report, paint).join('\n')}\n`;
}

function linesOf(report: FileReport, paint: Paint): readonly string[] {
  switch (report.outcome) {
    case 'refused':
      return [
        paint(visible(report.title), 'bold'),
        ...report.lines.map((line) => `  ${visible(line)}`),
        `  ${visible(report.advice)}`,
      ];
    case 'well-formed':
      return [
        `${heading(report, paint)}: ${paint('well formed', 'green')}`,
        `  A ${KIND_WORDS[report.kind]} has nothing wired in it: only the file was checked.`,
      ];
    case 'checked':
      return [
        `${heading(report, paint)}: ${paint(summary(report.findings), summaryColour(report.findings))}`,
        ...report.findings.flatMap((finding) => findingLines(finding, paint)),
      ];
  }
}

function heading({ file, name }: Exclude<FileReport, { outcome: 'refused' }>, paint: Paint): string {
  return `${paint(visible(file), 'bold')} (${visible(name)})`;
}

function findingLines({ severity, title, reason, remedies }: Found, paint: Paint): readonly string[] {
  return [
    '',
    `  ${paint(severity.toUpperCase(), COLOURS[severity])}  ${visible(title)}`,
    `    ${visible(reason)}`,
    ...remedies.map((remedy) => `    To do: ${visible(remedy)}`),
  ];
}

/** "1 danger, 2 faults", worst first. */
function summary(findings: readonly Found[]): string {
  const counts = SEVERITIES.map((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return { count, words: `${count}\u00a0${severity}${count === 1 ? '' : 's'}` };
  }).filter(({ count }) => count > 0);
  return counts.length === 0 ? 'nothing found' : counts.map(({ words }) => words).join(', ');
}

function summaryColour(findings: readonly Found[]): Colour {
  const worst = SEVERITIES.find((severity) => findings.some((finding) => finding.severity === severity));
  return worst === undefined ? 'green' : COLOURS[worst];
}
