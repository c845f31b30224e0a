import type { CheckReport, FileReport } from './check-report';

/** What a run says to the script that started it. */
export const EXIT = {
  /** Nothing worse than a doubt. */
  fine: 0,
  /** A fault or a danger was found. */
  wrong: 1,
  /** A file or an argument that could not be used. */
  badInput: 2,
  /** A mistake of our own. */
  ownBug: 70,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** The gravest outcome of all files: one that could not be read is graver than one that was found wrong. */
export function exitCodeOf({ files }: Pick<CheckReport, 'files'>): ExitCode {
  if (files.some(({ outcome }) => outcome === 'refused')) return EXIT.badInput;
  return files.some(isWrong) ? EXIT.wrong : EXIT.fine;
}

function isWrong(file: FileReport): boolean {
  if (file.outcome !== 'checked') return false;
  return file.findings.some(({ severity }) => severity === 'danger' || severity === 'fault');
}
