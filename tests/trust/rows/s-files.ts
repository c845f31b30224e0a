import { LIMITS } from '../../../boards/document/limits';
import { CHANNELS } from '../../../boards/host';
import { PICTURE_LIMITS } from '../../../boards/pinout/photo/picture-problem';
import { TAGS } from '../../boards/pinout/photo/picture-files';
import { PAYLOADS } from '../../strangers/engine-payloads';
import { guided } from '../../strangers/guided.mjs';
import { HARMFUL_INPUTS } from '../../strangers/harmful-inputs';
import { HARMFUL_PICTURES } from '../../strangers/harmful-pictures';
import { HOSTILE_TEXTS } from '../../strangers/hostile-texts';
import { mutants } from '../../strangers/mutants.mjs';
import { NEVER_DONE } from '../../strangers/never-done';
import { NO_FILES } from '../../strangers/no-files';
import { measureTooMuch } from '../../strangers/too-much-measured';
import { WAYS_OUT } from '../../strangers/ways-out';
import type { Tried, TrustRow } from '../row';
import { runTests, tryAll } from '../run-tests';
import { seedOfToday } from '../seed-of-today';

const PUSH = 100_000;
/** Of a document, of a picture, and how long a call may be. */
const LIMITS_OF_ALL = Object.keys(LIMITS).length + Object.keys(PICTURE_LIMITS).length + 1;
/** And one that grows while it is read. */
const KINDS_OF_NO_FILE = Object.keys(NO_FILES).length + 1;
const LED_MINUTES = 60;
/** For one file, whatever is done with it: of the clock or of the processor, whichever is less. */
const MOST_MS = 1_000;

async function damaged(count: number): Promise<Tried> {
  const seed = seedOfToday();
  const run = await mutants({ count, seed });
  const tried = Object.values(run.outcomes).flatMap((each) => Object.values(each));
  return {
    tried: tried.reduce((sum, each) => sum + each, 0),
    failures: told(seed, run),
  };
}

type Damaged = Pick<Awaited<ReturnType<typeof mutants>>, 'failures' | 'hung' | 'slowestMs' | 'slowest'>;

/** Whatever failed, hung, or took longer than anybody waits for a file that is not even whole. */
function told(seed: number, { failures, hung, slowestMs, slowest }: Damaged): readonly string[] {
  const slow = `seed ${seed}, ${slowest}: took ${slowestMs.toFixed(0)} ms, and ${MOST_MS} is the most`;
  return [
    ...failures.map(({ number, kind, reason }) => `seed ${seed}, ${number}, ${kind}: ${reason}`),
    ...(hung === null ? [] : [`seed ${seed}, ${hung}: hung`]),
    ...(slowestMs <= MOST_MS ? [] : [slow]),
  ];
}

export const ROWS: readonly TrustRow[] = [
  {
    id: 'S6',
    promise:
      'A damaged file of any kind is opened, set aside or refused in words: of a document with file, place and what was expected, of a photo with file and what to do, of copied pins with the line; none crashes, and none takes longer than a second',
    target: {
      count: PUSH,
      what: 'damaged builds, sheets, photos, lists, recovery copies and files of our own',
    },
    run: () => damaged(PUSH),
  },
  {
    id: 'S7',
    promise:
      'Every limit of a document and of a picture, and the length of a call, holds at itself and one past it; a file a thousand times past those that cost most is refused in a small heap, within 1 s of the processor and 300 MB',
    target: { count: LIMITS_OF_ALL, what: 'limits of documents and pictures, and the length of a call' },
    run: async () => {
      const limits = await tryAll(LIMITS_OF_ALL, [
        'tests/boards/document/limits.test.ts',
        'tests/strangers/calls.test.ts',
        'tests/strangers/too-much.test.ts',
        'tests/boards/pinout/photo/picture-head.test.ts',
      ]);
      const costly = await measureTooMuch((words) => void process.stdout.write(`S7, ${words}\n`));
      return { ...limits, failures: [...limits.failures, ...costly] };
    },
  },
  {
    id: 'S8',
    promise:
      'A picture file is looked at before it is decoded, and never decoded or taken at more than may be decoded',
    target: { count: 200, what: 'pictures made to do harm' },
    run: () =>
      tryAll(HARMFUL_PICTURES.length, [
        'tests/strangers/pictures.test.ts',
        'tests/renderer/document/take-photo.test.ts',
      ]),
  },
  {
    id: 'S9',
    promise:
      'Pipes, sockets, devices, folders, dangling links and growing files are refused, and others read meanwhile',
    target: { count: KINDS_OF_NO_FILE, what: 'kinds of what is no ordinary file' },
    run: () =>
      tryAll(KINDS_OF_NO_FILE, [
        'tests/strangers/no-way-out.test.ts',
        'tests/electron/host/read-file.test.ts',
      ]),
  },
  {
    id: 'S10',
    promise:
      'No name, no link and no text of a document leads out of the folder that was chosen, and a document is opened, checked and printed without a look at any file but itself and the program’s own',
    target: { count: 80, what: 'ways out' },
    run: () =>
      tryAll(WAYS_OUT.length, ['tests/strangers/no-way-out.test.ts', 'tests/strangers/never-a-path.test.ts']),
  },
  {
    id: 'S11',
    promise: 'Names that the engine gives a meaning to change nothing that all objects share',
    target: { count: 3_000, what: 'files, edits and pastes, beside builds with such names for ids' },
    run: () => tryAll(3 * PAYLOADS, ['tests/strangers/engine-names.test.ts']),
  },
  {
    id: 'S12',
    promise:
      'A text out of a file is text in pictures, PDFs, tables and terminals, and in every area and some twenty dialogs of the window',
    target: { count: 300, what: 'hostile texts, spread over every field for a person’s own words' },
    run: async () => {
      const sinks = await tryAll(HOSTILE_TEXTS.length, ['tests/strangers/shown-as-text.test.ts']);
      const { failures } = await runTests('e2e', ['tests/e2e/hostile-texts.test.ts']);
      return failures.length === 0
        ? sinks
        : { ...sinks, tried: 0, failures: [...sinks.failures, ...failures] };
    },
  },
  {
    id: 'S14',
    promise: 'No call takes what it was not made for, and none takes a path',
    target: { count: 500, what: 'calls with harmful inputs, as they cross: as JSON' },
    run: () =>
      tryAll(Object.keys(CHANNELS).length * HARMFUL_INPUTS.length, ['tests/strangers/calls.test.ts']),
  },
  {
    id: 'S17',
    promise: 'A photo that is taken into a sheet has nothing of what a camera writes beside the pixels',
    target: { count: 4, what: 'kinds of tags' },
    run: async () => {
      const taken = await tryAll(Object.keys(TAGS).length, [
        'tests/boards/pinout/photo/without-tags.test.ts',
        'tests/renderer/document/take-photo.test.ts',
      ]);
      const { failures } = await runTests('e2e', ['tests/e2e/photo-files.test.ts']);
      return { ...taken, failures: [...taken.failures, ...failures] };
    },
  },
  {
    id: 'S18',
    promise:
      'No code of the program reads or writes an archive, makes code out of text, starts a program or asks a host, but for files that are named with why: the door on this machine, its page, and what begins it on a clone',
    target: { count: NEVER_DONE.length, what: 'things that the program does not do' },
    run: () => tryAll(NEVER_DONE.length, ['tests/strangers/never-done.test.ts']),
  },
  {
    id: 'S19',
    promise:
      'Damaged files that are led by the places of the code they reach crash nothing, and none takes longer than a second, with other files every day',
    target: { count: LED_MINUTES, what: 'minutes, each run from what the one before kept' },
    long: true,
    run: async () => {
      const seed = seedOfToday();
      const run = await guided({ seed, minutes: LED_MINUTES });
      return { tried: Math.floor(run.minutes), failures: told(seed, run) };
    },
  },
];
