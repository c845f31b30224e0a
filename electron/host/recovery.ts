import { join } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { SaveProblem } from '../../boards/host';
import { orNullIfMissing } from './errno';
import type { FileSystem } from './file-system';
import { isAlive, ownLife } from './process-life';
import { readTextFile } from './read-file';
import { decodeCopy, encodeCopy, type RecoveryCopy, type RecoveryNote } from './recovery-copy';
import { saveFile } from './save-file';
import { saveProblemOf } from './save-problem';
import { makeTurns } from './turns';

/** Copies of unsaved work, one for each session of a page, in a folder of our own. */
export interface Recovery {
  /** A page has begun: whatever earlier pages of this process left behind is now to be offered. */
  readonly beginPage: () => void;
  readonly keep: (
    session: string,
    note: Omit<RecoveryNote, 'owner'>,
    text: string,
  ) => Promise<Result<null, SaveProblem>>;
  readonly drop: (session: string) => Promise<void>;
  /** Whole copies that no running page is working on, newest first. */
  readonly list: () => Promise<readonly OfferedCopy[]>;
  readonly read: (session: string) => Promise<RecoveryCopy | null>;
}

interface OfferedCopy {
  readonly session: string;
  readonly copy: RecoveryCopy;
}

/** The newest copy, and the one before it in case the newest is not whole. */
const GENERATIONS = ['.copy', '.former'] as const;
const [NEWEST, FORMER] = GENERATIONS;
const OFFER_LIMIT = 100;
const COPY_LIMIT_BYTES = 256 * 1024 * 1024;

export function openRecovery(fs: FileSystem, folder: string): Recovery {
  const turns = makeTurns();
  const owner = ownLife();
  const active = new Set<string>();
  const pathOf = (session: string, generation: string) => join(folder, session + generation);

  async function keepNow(session: string, content: string): Promise<Result<null, SaveProblem>> {
    try {
      await fs.makeFolder(folder);
      await orNullIfMissing(fs.rename(pathOf(session, NEWEST), pathOf(session, FORMER)));
    } catch (thrown) {
      return refuse(saveProblemOf(thrown, session));
    }
    const saved = await saveFile(fs, {
      path: pathOf(session, NEWEST),
      text: content,
      expected: null,
      mode: 0o600,
    });
    return saved.ok ? ok(null) : saved;
  }

  async function readNow(session: string): Promise<RecoveryCopy | null> {
    for (const generation of GENERATIONS) {
      const path = pathOf(session, generation);
      const found = await readTextFile(fs, path, COPY_LIMIT_BYTES);
      if (!found.ok && found.problem.code !== 'not-text') continue;
      const copy = found.ok ? decodeCopy(found.value.text) : 'broken';
      if (copy === 'newer') return null;
      if (copy !== 'broken') return copy;
      await fs.rename(path, `${path}.broken`).catch(() => undefined);
    }
    return null;
  }

  async function sessions(): Promise<readonly string[]> {
    const entries = (await orNullIfMissing(fs.list(folder)).catch(() => null)) ?? [];
    const names = entries.flatMap(({ name }) =>
      GENERATIONS.filter((end) => name.endsWith(end)).map((end) => name.slice(0, -end.length)),
    );
    return [...new Set(names)];
  }

  const isWorkedOn = (session: string, { header }: RecoveryCopy) =>
    header.owner.pid === owner.pid && header.owner.started === owner.started
      ? active.has(session)
      : isAlive(header.owner);

  return {
    beginPage: () => active.clear(),
    keep: (session, note, text) => {
      active.add(session);
      return turns.take(session, () => keepNow(session, encodeCopy({ ...note, owner }, text)));
    },
    drop: (session) =>
      turns.take(session, async () => {
        active.delete(session);
        for (const generation of GENERATIONS) {
          await fs.remove(pathOf(session, generation)).catch(() => undefined);
        }
      }),
    list: async () => {
      const offers: OfferedCopy[] = [];
      for (const session of await sessions()) {
        const copy = await turns.take(session, () => readNow(session));
        if (copy !== null && !isWorkedOn(session, copy)) offers.push({ session, copy });
      }
      return offers
        .sort((first, second) => second.copy.header.savedMs - first.copy.header.savedMs)
        .slice(0, OFFER_LIMIT);
    },
    read: (session) => turns.take(session, () => readNow(session)),
  };
}
