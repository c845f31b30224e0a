import type { HostApi, Input, SaveProblem } from '../../boards/host';
import { changesOf, type EditorStore, isUnsaved } from './editor';

/** A copy is written so long after the last edit, */
export const REST_MS = 1_000;
/** or after the first one since the last copy where there is no rest; and not more often than that. */
export const LONGEST_MS = 4_000;

export interface Recovery {
  /** Another document is about to be opened: its copy gets a new name, or goes on in the one it came from. */
  readonly begin: (adopted?: string) => void;
  /** Writes the copy at once, where there is something to lose. */
  readonly keepNow: () => Promise<void>;
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
  /** The first edit that no copy holds. */
  let unkeptMs: number | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let turn: Promise<unknown> = Promise.resolve();

  const inTurn = (work: () => Promise<void>): Promise<void> => {
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

  const write = async (copy: Input<'keepRecovery'>) => {
    const problem = await host.keepRecovery(copy).then(
      (answer) => (answer.ok ? undefined : answer.problem),
      () => null,
    );
    if (problem === undefined) {
      inTrouble = false;
      return;
    }
    if (!inTrouble) onTrouble(problem);
    inTrouble = true;
    schedule();
  };

  const keepNow = async () => {
    clearTimeout(timer);
    unkeptMs = null;
    const { open } = editor.getState();
    if (open === null || changesOf(open) === 0) return;
    lastMs = Date.now();
    kept = true;
    const { handle, stamp, name } = open.file;
    const text = JSON.stringify(open.history.present);
    const copy = { session: id, page, handle, stamp, name, text, changes: changesOf(open) };
    await inTurn(() => write(copy));
  };

  const drop = async () => {
    clearTimeout(timer);
    unkeptMs = null;
    if (!kept) return;
    kept = false;
    const dropped = id;
    // A machine that does not answer keeps the copy, and offers it once more: better than to lose it.
    await inTurn(() => host.dropRecovery({ id: dropped, page }).catch(() => undefined));
  };

  const stop = editor.subscribe(({ open }, { open: before }) => {
    if (open?.history.present === before?.history.present && open?.saved === before?.saved) return;
    if (open === null || !isUnsaved(open)) void drop();
    else schedule();
  });

  return {
    begin: (adopted) => {
      void drop();
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
