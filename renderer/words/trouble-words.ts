import type { Moment, Sense } from '../../boards/diagnosis/observations/observation';
import type { Trial } from '../../boards/diagnosis/trials/trial';

/** The groups of questions, by when something shows. */
export const MOMENT_WORDS: Readonly<Record<Moment, string>> = {
  'before-press': 'Before the press, machine off',
  'on-press': 'On the press',
  'after-seconds': 'In the first minute',
  'in-use': 'In use',
};

export const SENSE_WORDS: Readonly<Record<Sense, string>> = {
  see: 'look',
  hear: 'listen',
  smell: 'smell',
  feel: 'feel',
  read: 'read the screen',
  measure: 'measure',
  try: 'try',
};

export const NOTHING_SAID =
  'Nothing was noticed yet. These are only how often each is met. Answer what you see, beginning with “Look first”.';

export const NONE_WINS =
  'What was noticed fits none of the known faults well. Look again at the answers that surprise you, or ask somebody qualified.';

/** How much a trial is expected to tell. */
export function gainWords(gainBits: number): string {
  if (gainBits >= 0.5) return 'tells much';
  return gainBits >= 0.12 ? 'tells something' : 'tells little';
}

export function effortWords(minutes: number): string {
  return minutes < 1 ? 'under a minute' : `about ${Math.round(minutes)}\u00a0min`;
}

/** Why a trial is not to be made now. */
export const RISK_WORDS = {
  stop: 'Held back: after heat, smoke, sparks or a shock nothing is tried.',
  'may-burn': 'Held back: one of the likely faults may burn a part at the next start.',
} as const;

export function waitsWords(before: string, result: string): string {
  return `Has a meaning only after “${before}” with “${result}”.`;
}

export const TELLS_NOTHING = 'Would tell nothing more now.';

/** What to mind at a trial, beside its steps. */
export function trialCautions({ id, powered }: Trial): readonly string[] {
  const mains = powered
    ? 'Mains is on during this trial. Hands, tools and rings stay off the board, except as the steps say. At smell, smoke, heat or sparks pull the mains plug at once.'
    : 'Mains plug out, supply switch off, every light on the board gone out, and yourself discharged on bare metal, before you touch anything inside.';
  const more = CAUTIONS_OF[id];
  return more === undefined ? [mains] : [mains, more];
}

const CAUTIONS_OF: Readonly<Record<string, string>> = {
  'bare-pins':
    'If you are not sure which two pins these are, do not touch any: ask somebody who knows the board.',
  'measure-standby': 'Only for somebody who is used to measuring on a live machine. Never open the supply.',
  'other-supply': 'Never mix cables of two supplies, even if the plugs fit.',
  'one-memory-module': 'Hold modules by their edges, and discharge yourself before each one.',
  'out-of-case': 'No metal under the board, and nothing that can slip onto it.',
};
