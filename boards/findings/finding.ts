import type { PinRef } from '../document/lookup';
import type { Command } from '../edit/command';
import type { FindingData } from './finding-data';

/** From worst to mildest: can damage, will not work, look again, good to know. */
export const SEVERITIES = ['danger', 'fault', 'doubt', 'note'] as const;
export type Severity = (typeof SEVERITIES)[number];

export type FindingCode = keyof FindingData;

/** Something to do about a finding: a sentence, and where the program can do it, the command. */
export interface Remedy {
  readonly text: string;
  readonly command?: Command;
}

/** A finding of one of the given codes: codes, ids and data. All prose is in words.ts. */
export type FindingOf<Codes extends FindingCode> = {
  [Code in Codes]: {
    readonly code: Code;
    readonly severity: Severity;
    readonly leads: readonly string[];
    readonly pins: readonly PinRef[];
    readonly data: FindingData[Code];
    readonly remedies: readonly Remedy[];
  };
}[Codes];

/** One result of a check. */
export type Finding = FindingOf<FindingCode>;

/** The place of the tray that a finding is about, where it is about one. */
export function placeInTray({ data }: Finding): string | undefined {
  return 'standoff' in data ? data.standoff : undefined;
}

/**
 * What a finding is about beside leads and pins, of which some have none. What is measured or reckoned is not among
 * it, since that changes with the smallest edit.
 */
function subjectsOf({ data }: Finding): readonly string[] {
  return [
    'part' in data ? data.part : '',
    'plug' in data && data.plug ? data.plug.plug : '',
    'connector' in data ? data.connector : '',
    'unit' in data ? data.unit : '',
    'units' in data ? data.units.join('+') : '',
    'standoff' in data ? data.standoff : '',
    'signal' in data ? data.signal : '',
    'job' in data ? data.job : '',
  ].filter((subject) => subject !== '');
}

/** A name for a finding, its own among all of a build, that stays the same as long as it is about the same thing. */
export function findingId(finding: Finding): string {
  const pins = finding.pins.map(({ connector, pin }) => `${connector}.${pin}`);
  return [finding.code, finding.leads.join('+'), subjectsOf(finding).join('+'), pins.join('+')].join(':');
}
