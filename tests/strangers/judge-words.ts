import type { OpenProblem } from '../../boards/document/problem/problem';
import { openProblemWords } from '../../boards/document/problem/problem-words';
import type { ReadProblem } from '../../boards/host';
import type { PictureProblem } from '../../boards/pinout/photo/picture-problem';
import { pictureProblemWords } from '../../boards/pinout/photo/picture-words';
import { listProblemWords, listRefusalWords } from '../../boards/pinout/pin-list/list-words';
import type { readPinList } from '../../boards/pinout/pin-list/pin-list';
import { readProblemWords } from '../../electron/cli/read-words';
import { readProblemWords as windowWords } from '../../renderer/words/host-words';

interface Words {
  readonly title: string;
  readonly lines?: readonly string[];
  readonly advice: string;
}

/** Words for people: none empty, nothing in them that is not for the eye, nothing that a program says to itself. */
function needWords({ title, lines = [], advice }: Words): void {
  for (const each of [title, ...lines, advice]) {
    if (each.trim() === '') throw new Error('Words are missing');
    if (/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u.test(each))
      throw new Error(`Unseen letters in ${JSON.stringify(each)}`);
    if (/\[object |\bNaN\b(?!”)|\bundefined\b(?!”)|\n\s+at /.test(each.replace(/“[^”]*”/g, '“”')))
      throw new Error(`A program’s own words in ${JSON.stringify(each)}`);
  }
}

function needFile({ title }: Words, name: string): void {
  if (!title.includes(`“${name}”`)) throw new Error(`The title does not name the file: ${title}`);
}

/** What of a file could have been expected, as a refusal to read it says. */
const EXPECTED_OF_FILE = /was expected|at most|[Uu]p to|JSON/;

/** A file that was not read: on the terminal and in the window it is named, and what a file has to be. */
export function judgeReadRefusal(problem: ReadProblem, name: string): void {
  for (const words of [readProblemWords(problem, name), windowWords(problem)]) {
    needWords(words);
    needFile(words, name);
    if (!EXPECTED_OF_FILE.test(words.lines.join(' ')))
      throw new Error(`Nothing was expected: ${words.lines.join(' ')}`);
  }
}

/** A document that was not opened: the words name the file, the place in it, and what was expected there. */
export function judgeOpenRefusal(problem: OpenProblem, text: string, name: string): void {
  const words = openProblemWords(problem, name);
  needWords(words);
  needFile(words, name);
  for (const wanted of toldOf(problem))
    if (!words.lines.some((line) => line.includes(wanted)))
      throw new Error(`It is not told that ${wanted}: ${JSON.stringify(words.lines)}`);
  if (problem.code === 'not-json') {
    const row = text.split('\n')[problem.line - 1];
    if (row === undefined || problem.column > row.length + 2)
      throw new Error(`Line ${problem.line}, column ${problem.column} is not in the file`);
    if (!/ was expected, and /.test(problem.detail))
      throw new Error(`Nothing was expected: ${problem.detail}`);
  }
  if (problem.code === 'invalid') {
    if (problem.fields.length === 0) throw new Error('Invalid, and no place is named');
    for (const { path, expected, found } of problem.fields)
      if (path === '' || expected === '' || found === '')
        throw new Error(`A place is not told: ${JSON.stringify({ path, expected, found })}`);
  }
}

/** The place of a refusal, and what was expected there, as they have to stand in its lines. */
function toldOf(problem: OpenProblem): readonly string[] {
  switch (problem.code) {
    case 'too-large':
      return ['at most'];
    case 'empty':
      return ['There is nothing in it'];
    case 'not-json':
      return [`line\u00a0${problem.line}, column\u00a0${problem.column} on: ${problem.detail}`];
    case 'too-deep':
      return [`line\u00a0${problem.line} on`, `more than ${problem.limit}\u00a0levels`];
    case 'not-ours':
      return ['Expected “format” to be', `found ${problem.found}`];
    case 'newer':
      return [`version\u00a0${problem.version}`, `up to version\u00a0${problem.known}`];
    case 'invalid':
      return problem.fields.map(
        ({ path, expected, found }) => `${path}: expected ${expected}, found ${found}.`,
      );
  }
}

/** A photo that was not taken: the words name the file, say what it is, and what to do. */
export function judgePhotoRefusal(problem: PictureProblem, name: string): void {
  const words = pictureProblemWords(problem, name);
  needWords(words);
  needFile(words, name);
  if (!/^(?:Choose|Copy|Save|Take|Something)\b/.test(words.advice))
    throw new Error(`It is not said what to do: ${words.advice}`);
}

/** A pasted list: why it was not read, or what is the matter with what was. */
export function judgeListWords(read: ReturnType<typeof readPinList>): void {
  const said = read.ok ? read.value.problems.map(listProblemWords) : [listRefusalWords(read.problem)];
  for (const words of said) {
    needWords(words);
    if (words.title.length < 10) throw new Error(`A title without words: ${words.title}`);
  }
}

/** Copied pins that were refused: which line it is and what it has to be, or what is the matter with the whole. */
export function judgeCopiedRefusal(problem: string): void {
  needWords({ title: problem, advice: problem });
  const whole = /^(?:What was copied are no pins|That is more pins than|There is no pin)/;
  const line =
    /^Line\u00a0\d+ of what was copied: .*(?:has to be|it is no pin|is not as it was copied).* Nothing was pasted\.$/s;
  if (!whole.test(problem) && !line.test(problem)) throw new Error(`No line and no whole: ${problem}`);
}
