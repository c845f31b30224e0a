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

/** One result of a check: codes, ids and data. All prose is in words.ts. */
export type Finding = {
  [Code in FindingCode]: {
    readonly code: Code;
    readonly severity: Severity;
    readonly leads: readonly string[];
    readonly pins: readonly PinRef[];
    readonly data: FindingData[Code];
    readonly remedies: readonly Remedy[];
  };
}[FindingCode];
