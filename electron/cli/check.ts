import { analyse } from '../../boards/analyse';
import { type Result, refuse } from '../../boards/base/result';
import type { Build } from '../../boards/document/build';
import type { Document } from '../../boards/document/document';
import { parseDocument } from '../../boards/document/parse';
import type { OpenProblem } from '../../boards/document/problem/problem';
import { type OpenWords, openProblemWords } from '../../boards/document/problem/problem-words';
import { type Finding, placeInTray } from '../../boards/findings/finding';
import { numbersOf } from '../../boards/findings/finding-numbers';
import { wordsOf } from '../../boards/findings/words';
import { DISK } from '../host/file-system';
import { readTextFile } from '../host/read-file';
import type { ArrivalReport, CheckReport, FileReport, Refused } from './check-report';
import { readProblemWords } from './read-words';

/** Checks each file on its own: one that cannot be read does not stop the rest. */
export async function check(files: readonly string[]): Promise<CheckReport> {
  const reports: FileReport[] = [];
  for (const file of files) reports.push(await checkFile(file));
  return { format: 'leadwright/check-report', version: 1, files: reports };
}

async function checkFile(file: string): Promise<FileReport> {
  const opened = await openNamed(file);
  return opened.ok ? reportOn(file, opened.value) : opened.problem;
}

/** The document in a file, or why there is none. */
export async function openNamed(file: string): Promise<Result<Document, Refused>> {
  const found = await readTextFile(DISK, file);
  if (!found.ok) return refuse(refused(file, found.problem.code, readProblemWords(found.problem, file), []));
  const parsed = parseDocument(found.value.text);
  if (!parsed.ok) {
    const { problem } = parsed;
    return refuse(refused(file, problem.code, openProblemWords(problem, file), fieldsOf(problem)));
  }
  return parsed;
}

/** What is found in a document that could be read. */
export function reportOn(file: string, document: Document): FileReport {
  switch (document.format) {
    case 'leadwright/build':
      return { file, outcome: 'checked', kind: 'build', name: document.name, findings: findingsIn(document) };
    case 'leadwright/board':
      return { file, outcome: 'well-formed', kind: 'board', name: document.name };
    case 'leadwright/case':
      return { file, outcome: 'well-formed', kind: 'case', name: document.name };
  }
}

function findingsIn(build: Build): Extract<FileReport, { outcome: 'checked' }>['findings'] {
  return analyse(build).findings.map((finding) => ({
    code: finding.code,
    severity: finding.severity,
    ...wordsOf(finding, build),
    remedies: finding.remedies.map(({ text }) => text),
    leads: [...finding.leads],
    pins: finding.pins.map(({ connector, pin }) => ({ connector, pin })),
    ...placed(placeInTray(finding)),
    ...measured(numbersOf(finding)),
    ...arriving(finding),
  }));
}

function placed(place: string | undefined) {
  return place === undefined ? {} : { places: [place] };
}

function measured(numbers: Readonly<Record<string, number>>) {
  return Object.keys(numbers).length === 0 ? {} : { numbers: { ...numbers } };
}

/** Volts as fine as a meter tells them. */
function arriving(finding: Finding): { arrivals?: ArrivalReport[] } {
  if (finding.code !== 'supply-mismatch') return {};
  return {
    arrivals: finding.data.wrong.map(({ pin, signal, from, arrives }) => ({
      ...pin,
      madeFor: signal,
      from: from.map((each) => ({ ...each })),
      ...(arrives && {
        voltsUsual: hundredths(arrives.usual),
        voltsLow: hundredths(arrives.low),
        voltsHigh: hundredths(arrives.high),
      }),
    })),
  };
}

function hundredths(volts: number): number {
  return Math.round(volts * 100) / 100;
}

function refused(file: string, code: string, words: OpenWords, fields: Refused['fields']): Refused {
  const { title, lines, advice } = words;
  return { file, outcome: 'refused', code, title, lines: [...lines], advice, fields };
}

function fieldsOf(problem: OpenProblem): Refused['fields'] {
  return problem.code === 'invalid' ? problem.fields.map((field) => ({ ...field })) : [];
}
