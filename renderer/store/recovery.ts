import { serialize } from '../../boards/document/serialize';
import type { HostApi } from '../../boards/host';
import { changesOf, type EditorStore, isUnsaved } from './editor';

/** A copy is written so long after the last edit, and then not again for a while. */
export const REST_MS = 1_000;
export const LEAST_BETWEEN_MS = 5_000;

export interface Recovery {
  /** Another document is about to be opened: its copy gets a new name, or goes on in the one it came from. */
  readonly begin: (adopted?: string) => void;
  /** Writes the copy at once, where there is something to lose. */
  readonly keepNow: () => Promise<void>;
  /** The copy is not needed any more: saved, closed, or thrown away on purpose. */
  readonly drop: () => Promise<void>;
  readonly stop: () => void;
}

type RecoveryHost = Pick<HostApi, 'keepRecovery' | 'dropRecovery'>;

/** Keeps a recovery copy of whatever is unsaved in the editor. */
export function keepRecovery(host: RecoveryHost, editor: EditorStore, newId: () => string): Recovery {
  let id = newId();
  let kept = false;
  let lastMs = Number.NEGATIVE_INFINITY;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const keepNow = async () => {
    clearTimeout(timer);
    const { open } = editor.getState();
    if (open === null || !isUnsaved(open) || changesOf(open) === 0) return;
    lastMs = Date.now();
    kept = true;
    await host.keepRecovery({
      session: id,
      handle: open.file.handle,
      stamp: open.file.stamp,
      name: open.file.name,
      text: serialize(open.history.present),
      changes: changesOf(open),
    });
  };

  const drop = async () => {
    clearTimeout(timer);
    if (!kept) return;
    kept = false;
    await host.dropRecovery({ id });
  };

  const stop = editor.subscribe(({ open }, { open: before }) => {
    if (open?.history.present === before?.history.present && open?.saved === before?.saved) return;
    clearTimeout(timer);
    if (open === null || !isUnsaved(open)) {
      void drop();
      return;
    }
    if (changesOf(open) === 0) return;
    timer = setTimeout(() => void keepNow(), Math.max(REST_MS, lastMs + LEAST_BETWEEN_MS - Date.now()));
  });

  return {
    begin: (adopted) => {
      void drop();
      id = adopted ?? newId();
      kept = adopted !== undefined;
    },
    keepNow,
    drop,
    stop: () => {
      clearTimeout(timer);
      stop();
    },
  };
}
