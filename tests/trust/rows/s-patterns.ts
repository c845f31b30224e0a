import { parseDocument } from '../../../boards/document/parse';
import { LineZ, NotesZ } from '../../../boards/document/text';
import { csvText } from '../../../boards/handover/csv';
import { xmlText } from '../../../boards/handover/svg/xml';
import { zigZag } from '../../../boards/library/grids';
import { readPinList } from '../../../boards/pinout/pin-list/pin-list';
import { visible } from '../../../electron/cli/terminal';
import { nameProblem } from '../../../electron/host/new-name';
import { readCopied } from '../../../renderer/areas/document/connector/pin-clipboard';
import { bareBoard } from '../../electron/scratch';
import type { TrustRow } from '../row';

const LENGTH = 100_000;
/** Of the processor, not by the clock: what else the machine has to do does not count. */
const MOST_MS = 50;
/**
 * Four times the text takes four times the time; what takes sixteen times as long grows with its square. Twice would
 * not tell: one round of clearing up more is as long as the check itself.
 */
const TIMES = 4;
const MOST_GROWTH = 8;
/** What the engine does meanwhile is not told from growth. */
const MEANWHILE_MS = 10;
const ROUNDS = 5;

/** Everything that looks at a text of a person or of a file by patterns. */
const CHECKS: Readonly<Record<string, (text: string) => unknown>> = {
  'a file': (text) => parseDocument(text),
  'a file with it in a name': (text) => parseDocument(bareBoard(text)),
  'a line': (text) => LineZ.safeParse(text),
  notes: (text) => NotesZ.safeParse(text),
  'a pasted list': (text) => readPinList(text, { grid: zigZag(5) }),
  'copied pins': (text) => readCopied(text),
  'a table': (text) => csvText([[text]]),
  'a picture': (text) => xmlText(text),
  'a terminal': (text) => visible(text),
  'the name of a file': (text) => nameProblem(text, 'build'),
};

/** Pieces that patterns with nested or neighbouring repeats take long over. */
const PIECES = [
  'a',
  ' ',
  '1',
  '-',
  '.',
  ',',
  '"',
  '\\',
  '\t',
  '\n',
  'a ',
  '1-',
  '1,2 ',
  'a-b',
  '((',
  '\u200b',
  '=',
  '\u00a0',
  '1 GND ',
  '{"a":',
];

export const ROWS: readonly TrustRow[] = [
  {
    id: 'S15',
    promise: `A check of a text takes time as its length, whatever stands in it, and at most ${MOST_MS} ms of the processor for ${LENGTH / 1_000} kB`,
    target: { count: Object.keys(CHECKS).length * PIECES.length, what: 'texts made to be slow' },
    run: async () => {
      const failures: string[] = [];
      let tried = 0;
      for (const [name, check] of Object.entries(CHECKS))
        for (const piece of PIECES) {
          const once = least(() => check(textOf(piece, LENGTH)));
          const more = least(() => check(textOf(piece, TIMES * LENGTH)));
          tried += 1;
          if (once > MOST_MS || more > MOST_GROWTH * once + MEANWHILE_MS)
            failures.push(
              `${name} of ${JSON.stringify(piece)}: ${once.toFixed(0)} ms, ${TIMES} times of it ${more.toFixed(0)} ms`,
            );
        }
      return { tried, failures, notRun: 'a checker of expressions: none is among the packages' };
    },
  },
];

function textOf(piece: string, length: number): string {
  return `${piece.repeat(Math.ceil(length / piece.length)).slice(0, length)}!`;
}

/** The least of a few times, in milliseconds of the processor. */
function least(work: () => unknown): number {
  return Math.min(
    ...Array.from({ length: ROUNDS }, () => {
      const began = process.cpuUsage();
      work();
      const { user, system } = process.cpuUsage(began);
      return (user + system) / 1_000;
    }),
  );
}
