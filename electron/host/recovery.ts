import { join } from 'node:path';
import { ok, type Result, refuse } from '../../boards/base/result';
import type { SaveProblem } from '../../boards/host';
import { orNullIfMissing } from './errno';
import type { FileSystem } from './file-system';
import { flushFolder } from './flush-folder';
import { isAlive, ownLife } from './process-life';
import { readTextFile } from './read-file';
import { decodeCopy, encodeCopy, type RecoveryCopy, type RecoveryNote } from './recovery-copy';
import { saveFile } from './save-file';
import { saveProblemOf } from './save-problem';
import { makeTurns } from './turns';

/** Copies of unsaved work, one for each session of a page, in a folder of our own. */
export interface Recovery {
  /** A page is there; what it keeps is not offered to others. */
  readonly beginPage: (page: string) => void;
  /** A page is gone: what it kept is to be offered from now on. */
  readonly endPage: (page: string) => void;
  /** All pages are gone, where a new one takes the place of the one before. */
  readonly endPages: () => void;
  readonly keep: (
    session: string,
    page: string,
    note: Omit<RecoveryNote, 'owner' | 'serial'>,
    text: string,
  ) => Promise<Result<null, SaveProblem>>;
  /** Removes the copies of a session, unless another page works on it. */
  readonly drop: (session: string, page: string) => Promise<void>;
  /** Whole copies that no running page is working on, newest first. */
  readonly list: () => Promise<readonly OfferedCopy[]>;
  /** The copy, which from then on is the page's own; "elsewhere" where another page works on it. */
  readonly take: (session: string, page: string) => Promise<RecoveryCopy | 'elsewhere' | null>;
}

interface OfferedCopy {
  readonly session: string;
  readonly copy: RecoveryCopy;
}

interface Slot {
  readonly end: (typeof SLOTS)[number];
  readonly copy: RecoveryCopy;
}

/**
 * Two files for each session. A new copy always takes the place of the older one, so that the newest is whole
 * in its own file until the next is too, and nothing has to be moved about.
 */
const SLOTS = ['.a.copy', '.b.copy'] as const;
const OFFER_LIMIT = 100;
const COPY_LIMIT_BYTES = 256 * 1024 * 1024;

export function openRecovery(fs: FileSystem, folder: string): Recovery {
  const turns = makeTurns();
  const owner = ownLife();
  const pages = new Set<string>();
  /** Which page works on what. */
  const active = new Map<string, string>();
  /** The newest copy of each session that we have written ourselves, so that none is read again to write the next. */
  const written = new Map<string, { readonly end: Slot['end']; readonly serial: number }>();
  const pathOf = (session: string, end: string) => join(folder, session + end);

  /** The whole copies of a session, newest first; null where there is one of a newer program. */
  async function slotsOf(session: string): Promise<readonly Slot[] | null> {
    const whole: Slot[] = [];
    for (const end of SLOTS) {
      const path = pathOf(session, end);
      const found = await readTextFile(fs, path, COPY_LIMIT_BYTES);
      if (!found.ok && found.problem.code !== 'not-text') continue;
      const copy = found.ok ? decodeCopy(found.value.text) : 'broken';
      if (copy === 'newer') return null;
      if (copy === 'broken') await fs.rename(path, `${path}.broken`).catch(() => undefined);
      else whole.push({ end, copy });
    }
    return whole.sort((first, second) => second.copy.header.serial - first.copy.header.serial);
  }

  async function newestOnDisk(session: string) {
    const slot = (await slotsOf(session))?.[0];
    return slot && { end: slot.end, serial: slot.copy.header.serial };
  }

  const readNow = async (session: string) => (await slotsOf(session))?.[0]?.copy ?? null;

  async function keepNow(
    session: string,
    note: Omit<RecoveryNote, 'owner' | 'serial'>,
    text: string,
  ): Promise<Result<null, SaveProblem>> {
    try {
      await fs.makeFolder(folder);
    } catch (thrown) {
      return refuse(saveProblemOf(thrown, session));
    }
    const newest = written.get(session) ?? (await newestOnDisk(session));
    const serial = (newest?.serial ?? 0) + 1;
    const end = newest?.end === SLOTS[0] ? SLOTS[1] : SLOTS[0];
    const content = encodeCopy({ ...note, owner, serial }, text);
    const save = { path: pathOf(session, end), text: content, expected: null, mode: 0o600 };
    const saved = await saveFile(fs, save);
    if (!saved.ok) return saved;
    written.set(session, { end, serial });
    return ok(null);
  }

  async function sessions(): Promise<readonly string[]> {
    const entries = (await orNullIfMissing(fs.list(folder)).catch(() => null)) ?? [];
    const names = entries.flatMap(({ name }) =>
      SLOTS.filter((end) => name.endsWith(end)).map((end) => name.slice(0, -end.length)),
    );
    return [...new Set(names)];
  }

  /** Whether some page works on it, other than the one that asks. */
  function isWorkedOn(session: string, copy: RecoveryCopy | null, asking: string | null): boolean {
    const page = active.get(session);
    if (page !== undefined && page !== asking && pages.has(page)) return true;
    if (copy === null || page === asking) return false;
    const { owner: other, savedMs } = copy.header;
    const isOurs = other.pid === owner.pid && other.started === owner.started;
    return !isOurs && isAlive(other, savedMs);
  }

  return {
    beginPage: (page) => void pages.add(page),
    endPage: (page) => void pages.delete(page),
    endPages: () => pages.clear(),
    keep: (session, page, note, text) => {
      active.set(session, page);
      return turns.take(session, () => keepNow(session, note, text));
    },
    drop: (session, page) =>
      turns.take(session, async () => {
        const slots = (await slotsOf(session)) ?? [];
        if (isWorkedOn(session, slots[0]?.copy ?? null, page)) return;
        active.delete(session);
        written.delete(session);
        // The older first: what cannot be removed now is then offered as it was last, not as it was before.
        const newest = slots[0]?.end ?? SLOTS[0];
        for (const end of [...SLOTS.filter((slot) => slot !== newest), newest]) {
          try {
            await orNullIfMissing(fs.remove(pathOf(session, end)));
            await flushFolder(fs, folder);
          } catch {
            return;
          }
        }
      }),
    list: async () => {
      const offers: OfferedCopy[] = [];
      for (const session of await sessions()) {
        const copy = await turns.take(session, () => readNow(session));
        if (copy !== null && !isWorkedOn(session, copy, null)) offers.push({ session, copy });
      }
      return offers
        .sort((first, second) => second.copy.header.savedMs - first.copy.header.savedMs)
        .slice(0, OFFER_LIMIT);
    },
    take: (session, page) =>
      turns.take(session, async () => {
        const copy = await readNow(session);
        if (copy === null) return null;
        if (isWorkedOn(session, copy, page)) return 'elsewhere';
        active.set(session, page);
        // Written once more under our own name, so that another program knows too; where that fails, what is
        // there stays.
        const { path, stamp, name, savedMs, changes } = copy.header;
        await keepNow(session, { path, stamp, name, savedMs, changes }, copy.text);
        return copy;
      }),
  };
}
