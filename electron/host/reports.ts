import { join } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { SaveProblem } from '../../boards/host';
import type { FileSystem } from './file-system';
import { saveFile } from './save-file';
import { saveProblemOf } from './save-problem';
import { type Circumstances, reportText, type Trouble } from './trouble-report';

/** Reports of failures of the program, in a folder of our own; nothing sends them. */
export interface Reports {
  readonly write: (
    trouble: Trouble,
  ) => Promise<
    Result<{ readonly name: string; readonly folder: string; readonly text: string }, SaveProblem>
  >;
}

const KEPT = 10;
const NAME = /^report-\d{8}-\d{9}\.txt$/;

export function failureReports(
  fs: FileSystem,
  folder: string,
  about: Omit<Circumstances, 'when'>,
  now: () => Date,
): Reports {
  return {
    write: async (trouble) => {
      const when = now();
      const digits = when.toISOString().replaceAll(/\D/g, '');
      const name = `report-${digits.slice(0, 8)}-${digits.slice(8)}.txt`;
      const text = reportText(trouble, { ...about, when });
      try {
        await fs.makeFolder(folder);
        const saved = await saveFile(fs, { path: join(folder, name), text, expected: null, mode: 0o600 });
        if (!saved.ok) return saved;
        await keepFew(fs, folder);
        return ok({ name, folder, text });
      } catch (thrown) {
        return refuse(saveProblemOf(thrown, name));
      }
    },
  };
}

/** A program that fails over and over must not fill the disk: the oldest reports go. */
async function keepFew(fs: FileSystem, folder: string): Promise<void> {
  const names = (await fs.list(folder)).map(({ name }) => name).filter((name) => NAME.test(name));
  for (const name of names.sort().slice(0, -KEPT)) await fs.remove(join(folder, name)).catch(() => undefined);
}
