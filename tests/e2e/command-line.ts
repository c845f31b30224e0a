import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { type CheckReport, CheckReportZ } from '../../electron/cli/check-report';

/** Runs `leadwright check --json` as a program of its own. A fault or danger (1) is an answer, not a failure. */
export function checkByCommandLine(file: string): Promise<CheckReport> {
  const program = fileURLToPath(new URL('../../dist/leadwright.mjs', import.meta.url));
  return new Promise((resolve, reject) => {
    execFile(process.execPath, [program, 'check', '--json', file], (thrown, printed) => {
      if (thrown && thrown.code !== 1) reject(thrown);
      else resolve(CheckReportZ.parse(JSON.parse(printed)));
    });
  });
}
