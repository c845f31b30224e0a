import { listed } from '../../base/listed';
import { SEVERITIES, type Severity } from '../../findings/finding';
import type { BenchPart } from './options';

const NBSP = '\u00a0';

/** How many findings there are of each severity. */
export type Counts = Readonly<Record<Severity, number>>;

/** "1 danger, 2 faults, no doubts and 3 notes". */
export function countWords(counts: Counts): string {
  return listed(
    SEVERITIES.map((severity) => `${counts[severity] || 'no'}${NBSP}${severity}${plural(counts[severity])}`),
  );
}

function plural(count: number): string {
  return count === 1 ? '' : 's';
}

export const NOTHING_LEFT = 'The checks find no danger and no fault in this wiring.';

export const DANGER_TITLE = 'Danger: do not connect the mains with this wiring';

/** What stands in the box at the top while a danger or a fault is left. */
export function leftWords({ danger, fault }: Counts): { readonly title: string; readonly line: string } {
  const left = listed([
    ...(danger > 0 ? [`${danger}${NBSP}danger${plural(danger)}`] : []),
    ...(fault > 0 ? [`${fault}${NBSP}fault${plural(fault)}`] : []),
  ]);
  const are = danger + fault === 1 ? 'is' : 'are';
  return danger > 0
    ? {
        title: DANGER_TITLE,
        line: `${left} ${are} left. What follows is the wiring as it is, with what can damage parts in it.`,
      }
    : {
        title: 'Fault: this wiring will not work as it is',
        line: `${left} ${are} left. What follows is the wiring as it is, with what is wrong in it.`,
      };
}

export const PART_TITLES: Readonly<Record<BenchPart, string>> = {
  steps: 'The work, step by step',
  'close-ups': 'The headers with their plugs',
  meter: 'What the meter has to show',
  list: 'Every wire from part to pin',
  cables: 'Every cable and its way',
};

/** What is to be known before a part. */
export const PART_WORDS: Readonly<Record<BenchPart, string>> = {
  steps: 'In an order in which nothing blocks what comes later. Tick each step when it is done.',
  'close-ups':
    'As the board lies on these pages, not to scale. The triangle on a plug is its mark; beside every wire stands its colour.',
  meter:
    'Unplugged, supply switched off, every plug in its place and the leads of the supply not yet plugged in. Write down what the meter shows; meters differ a little.',
  list: 'By plug, then by hole. Where the pin is empty, the hole lies over no pin.',
  cables:
    'In the order in which they are laid. Lengths are those that were measured; what is left over at the ends is taken off before anything is to spare.',
};

export const NO_PLUGS = 'No plug is seated in this build yet.';
export const NO_CABLES = 'No cable of this build is measured yet.';
export const NOTHING_TO_MEASURE = 'Nothing in this wiring can be told by a meter before power.';
