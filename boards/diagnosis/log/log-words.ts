import type { Build } from '../../document/build';
import { leadName } from '../../document/names';
import { observationNamed } from '../observations/observations';
import type { ResultId, Trial } from '../trials/trial';
import { trialWords } from '../trials/words';
import type { TrialWords } from '../trials/words/phrases';
import type { ReadLine } from './read-log';

/** What came of a trial, as it stands on a button and in the log. What it says is said beside it. */
const RESULT_NAMES: Readonly<Record<ResultId, string>> = {
  gone: 'The trouble is gone',
  other: 'Another trouble now',
  same: 'No change',
  back: 'The trouble is back',
  'not-back': 'Still as it should be',
  found: 'Something is wrong there',
  'switch-off': 'The rear switch is off',
  'selector-wrong': 'The selector is wrong',
  'metal-in-port': 'Metal in a rear socket',
  hangs: 'A button hangs',
  'no-click': 'A button does not click',
  'plug-off': 'A plug is off',
  'plug-elsewhere': 'A plug is in the wrong place',
  'plug-turned': 'A plug is the wrong way round',
  'plug-other-kind': 'A plug of another kind',
  'in-the-way': 'Something is in the way',
  burnt: 'Something is burnt',
  pinched: 'A cable is pinched',
  'socket-broken': 'The socket is broken',
  'cap-off': 'A cap is missing',
  'cap-elsewhere': 'A cap is in another place',
  'cooler-loose': 'The cooler does not sit flat',
  'fan-stuck': 'A fan is stiff or blocked',
  'hub-unfed': 'A hub lacks supply or signal',
  'signals-joined': 'Two fans tell their speed',
  'wire-open': 'A wire is off or broken',
  'came-loose': 'A part is not home',
  'loose-metal': 'Loose metal',
  standoff: 'A standoff too many',
  'list-wrong': 'The list is wrong',
  'wires-exchanged': 'Wires are exchanged',
  'not-found': 'All as it should be',
  there: 'The voltage is there',
  low: 'The voltage is low',
  none: 'No voltage',
  starts: 'It starts',
  'stays-off': 'It stays off',
  'closes-on-press': 'Closes on the press',
  'always-closed': 'Always closed',
  'never-closes': 'Never closes',
  'now-and-then': 'Now and then',
};

export function resultName(result: ResultId): string {
  return RESULT_NAMES[result];
}

/** The words of a trial with the name of its lead, as the build has it. */
export function trialWordsIn(build: Build, trial: Trial): TrialWords {
  const words = trialWords(trial);
  const { lead } = trial;
  if (lead === undefined) return words;
  return { ...words, title: `Put ${leadName(build, lead)} back, and no other lead` };
}

/** A line of the log: what was asked or tried, and what came of it. */
export interface LineWords {
  readonly what: string;
  /** Empty for a remark, and where nothing came of it. */
  readonly came: string;
}

const UNKNOWN = 'this version has no such code, so it counts for nothing';

export function lineWords(build: Build, { entry, told, unknown }: ReadLine): LineWords {
  switch (entry.kind) {
    case 'noticed': {
      const asked = observationNamed(entry.what)?.question;
      const answer = entry.answer === 'yes' ? 'Yes' : 'No';
      return { what: asked ?? `“${entry.what}”`, came: unknown ? `${answer}; ${UNKNOWN}` : answer };
    }
    case 'tried':
      if (told?.kind === 'tried')
        return {
          what: trialWordsIn(build, told.tried.trial).title,
          came: resultName(told.tried.result),
        };
      return {
        what: `Trial “${entry.trial}”`,
        came: unknown ? `“${entry.result}”; ${UNKNOWN}` : `“${entry.result}”`,
      };
    case 'remark':
      return { what: entry.text, came: '' };
    case 'started-over':
      return { what: 'Started over: what stands before this counts no more.', came: '' };
  }
}
