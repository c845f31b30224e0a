import { analyse } from '../../../boards/analyse';
import type { Build } from '../../../boards/document/build';
import { type Finding, findingId, placeInTray } from '../../../boards/findings/finding';
import { wordsOf } from '../../../boards/findings/words';
import type { BenchStep } from '../../../boards/handover/steps/bench-steps';
import { SeveritySign } from '../../look/severity-sign';

/** What the checks say of the lead or the standoffs that a step is about, in a line each; nothing for other steps. */
export function FoundHere({ build, step }: { readonly build: Build; readonly step: BenchStep }) {
  const found = analyse(build).findings.filter((finding) => isAbout(finding, step));
  if (found.length === 0) return null;
  return (
    <ul
      className="found-here"
      aria-label={`What the checks say of ${step.kind === 'standoffs' ? 'standoffs' : 'this lead'}`}
    >
      {found.map((finding) => (
        <li key={findingId(finding)}>
          <SeveritySign severity={finding.severity} spoken />
          <span>{wordsOf(finding, build).title}</span>
        </li>
      ))}
    </ul>
  );
}

function isAbout(finding: Finding, step: BenchStep): boolean {
  if (step.kind === 'standoffs') return placeInTray(finding) !== undefined;
  const lead = leadOfStep(step);
  return lead !== undefined && finding.leads.includes(lead);
}

function leadOfStep(step: BenchStep): string | undefined {
  switch (step.kind) {
    case 'chore':
    case 'standoffs':
      return undefined;
    case 'plug':
      return step.seated.lead.id;
    case 'meter':
      return step.step.lead;
  }
}
