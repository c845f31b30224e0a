import type { Build } from '../../boards/document/build';
import type { HostApi, Input, SaveProblem } from '../../boards/host';
import { changesOf, type EditorStore, isUnsaved } from './editor';

/** A copy is written so long after the last edit, */
export const REST_MS = 1_000;
/** or after the first one since the last copy where there is no rest; and not more often than that. */
export const LONGEST_MS = 4_000;

export interface Recovery {
  /** Another document is about to be opened: its copy gets a new name, or goes on in the one it came from. */
  readonly begin: (adopted?: string) => void;
  /** Writes the copy at once; whether it is there then. Null: there is nothing to lose. */
  readonly keepNow: () => Promise<boolean | null>;
  /** What is unsaved is being saved: until that is done a copy has time, as long as copies ever have. */
  readonly putOff: () => void;
  /** The copy is not needed any more: saved, closed, or thrown away on purpose. */
  readonly drop: () => Promise<void>;
  readonly stop: () => void;
}

type RecoveryHost = Pick<HostApi, 'keepRecovery' | 'dropRecovery'>;

interface RecoveryOptions {
  /** What the page calls itself. */
  readonly page: string;
  readonly newId: () => string;
  /** Unsaved work cannot be kept, and why; null where the machine does not answer. Told once, until it can again. */
  readonly onTrouble: (problem: SaveProblem | null) => void;
}

/**
 * Keeps a recovery copy of whatever is unsaved in the editor. The machine is asked one thing after the other,
 * so that a copy that takes long is never written after it has been dropped.
 */
export function keepRecovery(
  host: RecoveryHost,
  editor: EditorStore,
  { page, newId, onTrouble }: RecoveryOptions,
): Recovery {
  let id = newId();
  let kept = false;
  let inTrouble = false;
  let lastMs = Number.NEGATIVE_INFINITY;
  /** What would be offered again as it is: what was taken up from a copy, or written into one last. */
  let held: Build | null = null;
  /** The first edit that no copy holds. */
  let unkeptMs: number | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let turn: Promise<unknown> = Promise.resolve();

  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const mine = turn.then(work);
    turn = mine.catch(() => undefined);
    return mine;
  };

  const keepIn = (restMs: number) => {
    clearTimeout(timer);
    const now = Date.now();
    unkeptMs ??= now;
    const dueMs = Math.max(lastMs + LONGEST_MS, Math.min(now + restMs, unkeptMs + LONGEST_MS));
    timer = setTimeout(() => void keepNow(), dueMs - now);
  };
  const schedule = () => keepIn(REST_MS);

  const write = async (copy: Input<'keepRecovery'>): Promise<boolean> => {
    const problem = await host.keepRecovery(copy).then(
      (answer) => (answer.ok ? undefined : answer.problem),
      () => null,
    );
    if (problem === undefined) {
      inTrouble = false;
      return true;
    }
    held = null;
    if (!inTrouble) onTrouble(problem);
    inTrouble = true;
    schedule();
    return false;
  };

  const keepNow = async (): Promise<boolean | null> => {
    clearTimeout(timer);
    unkeptMs = null;
    const { open } = editor.getState();
    if (open === null || !isUnsaved(open)) return null;
    const { present } = open.history;
    // A copy of it may still be under way; or it needs none, as a version that was opened and not touched.
    if (present === held) return inTurn(async () => (held === null ? false : kept || null));
    lastMs = Date.now();
    kept = true;
    held = present;
    const { handle, stamp, name } = open.file;
    // Something is unsaved, though undoing may have led back to where this window began.
    const changes = Math.max(1, changesOf(open));
    const copy = { session: id, page, handle, stamp, name, text: JSON.stringify(present), changes };
    return inTurn(() => write(copy));
  };

  const drop = async () => {
    clearTimeout(timer);
    unkeptMs = null;
    held = null;
    if (!kept) return;
    kept = false;
    const dropped = id;
    // A machine that does not answer keeps the copy, and offers it once more: better than to lose it.
    await inTurn(() => host.dropRecovery({ id: dropped, page }).catch(() => undefined));
  };

  const stop = editor.subscribe(({ open }, { open: before }) => {
    if (open?.history.present === before?.history.present && open?.saved === before?.saved) return;
    // What is opened is on disk as it is, in a file, a version or a copy.
    if (open?.opening !== before?.opening) held = open?.history.present ?? null;
    if (open === null || !isUnsaved(open)) void drop();
    else schedule();
  });

  return {
    begin: (adopted) => {
      if (adopted !== id) void drop();
      id = adopted ?? newId();
      kept = adopted !== undefined;
    },
    keepNow,
    putOff: () => {
      if (unkeptMs !== null) keepIn(LONGEST_MS);
    },
    drop,
    stop: () => {
      clearTimeout(timer);
      stop();
    },
  };
}
