import { capital } from '../../base/capital';
import type { Build } from '../../document/build';
import { standoffName, standoffWords } from '../../routing/case/standoff-words';
import type { StandoffFinding } from '../../routing/case/standoffs';
import type { WordsFor } from './finding-words';

/** Standoffs of the tray under the board. */
export const STANDOFF_WORDS: WordsFor<'standoff-short' | 'standoff-beside-hole'> = {
  'standoff-short': ({ severity, data: { standoff, fixed } }, build) => {
    const level = severity === 'danger' ? 'danger' : 'doubt';
    const name = nameIn(build, standoff);
    return {
      title:
        level === 'danger'
          ? `${capital(name)} would short the board.`
          : `${capital(name)} would short the board if it is there.`,
      reason: wordsIn(build, { code: 'short', level, standoff, fixed }),
    };
  },

  'standoff-beside-hole': ({ data }, build) => ({
    title: `${capital(nameIn(build, data.standoff))} is not right under a hole of the board.`,
    reason: wordsIn(build, { code: 'off', level: 'doubt', ...data }),
  }),
};

function nameIn({ case: { tray } }: Build, standoff: string): string {
  return tray === undefined ? standoff : standoffName(standoff, tray);
}

function wordsIn({ board, case: { tray } }: Build, finding: StandoffFinding): string {
  return tray === undefined ? '' : standoffWords(finding, board.outline, tray);
}
