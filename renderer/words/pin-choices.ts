import { type PinSource, SOURCE_KINDS } from '../../boards/document/connector';
import { SOURCE_WORDS } from '../../boards/document/pin-words';
import { LEAST } from '../../boards/document/sureness';
import { jobName } from '../../boards/signals/job-names';
import { JOBS } from '../../boards/signals/signal';

const NBSP = '\u00a0';

/** Where a statement was read, to choose from. */
export const KIND_CHOICES: readonly { readonly id: PinSource['kind']; readonly label: string }[] =
  SOURCE_KINDS.map((id) => ({ id, label: SOURCE_WORDS[id] }));

export const JOB_CHOICES = JOBS.map((id) => ({ id, label: jobName(id) }));

/** Which 5 V a wake jumper lays on a socket. */
export const WAKE_CHOICES = [
  { id: 'unsaid', label: 'not said' },
  { id: 'standby', label: `+5${NBSP}V standby` },
  { id: 'main', label: `+5${NBSP}V, only while it runs` },
] as const;

/** How sure, and the number that stands for it in the sheet. */
export const SURE_CHOICES = [
  { id: 'unsaid', label: 'not said', value: undefined },
  { id: 'sure', label: 'sure', value: 1 },
  { id: 'fairly', label: 'fairly sure', value: 0.8 },
  { id: 'likely', label: 'likely', value: 0.6 },
  { id: 'guess', label: 'a guess', value: 0.3 },
] as const;

export type SureChoice = (typeof SURE_CHOICES)[number]['id'];

/** The choice under which a confidence falls. */
export function sureChoice(confidence: number | undefined): SureChoice {
  if (confidence === undefined) return 'unsaid';
  if (confidence >= LEAST.sure) return 'sure';
  if (confidence >= LEAST.fairly) return 'fairly';
  return confidence >= LEAST.likely ? 'likely' : 'guess';
}
