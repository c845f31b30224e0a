import { useCallback, useEffect, useRef, useState } from 'react';
import { asLaid } from '../../../../boards/routing/laid/as-laid';
import { type LaidTogether, pinnedWays } from '../../../../boards/routing/laid/route-differences';
import type { RoutingProgress } from '../../../../boards/routing/search/all-routes';
import { useWorkbench } from '../../../workbench';
import type { LayingTold } from './laying-messages';
import workerAddress from './laying-worker?worker&url';

/** How the search for a way of every cable stands. */
export interface LayingRun {
  readonly stage: 'working' | 'done' | 'stopped' | 'failed';
  readonly progress: RoutingProgress | null;
  /** What was found, and for which cables on which tray. */
  readonly found: LaidTogether | null;
}

interface LayingAll {
  readonly run: LayingRun;
  readonly layAnew: () => void;
  readonly stop: () => void;
}

const BEGUN: LayingRun = { stage: 'working', progress: null, found: null };

/** Lays all cables of the open build off the main thread: at once, and when asked again. */
export function useLaying(): LayingAll {
  const { editor } = useWorkbench();
  const [run, setRun] = useState(BEGUN);
  const [round, setRound] = useState(0);
  const worker = useRef<Worker | null>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: every round asks anew
  useEffect(() => {
    const build = editor.getState().open?.history.present;
    const laid = build && asLaid(build);
    if (laid === undefined) return;
    const { laying } = laid;
    const pinned = pinnedWays(laid);
    const working = new Worker(workerAddress, { type: 'module' });
    worker.current = working;
    setRun(BEGUN);
    working.addEventListener('message', ({ data }: MessageEvent<LayingTold>) => {
      setRun((before) =>
        data.kind === 'progress'
          ? { ...before, progress: data.progress }
          : { stage: 'done', progress: null, found: { routes: data.found, laying, pinned } },
      );
    });
    working.addEventListener('error', () => {
      setRun((before) => ({ ...before, stage: 'failed', progress: null }));
    });
    working.postMessage({ laying, pinned });
    return () => working.terminate();
  }, [editor, round]);

  const layAnew = useCallback(() => setRound((before) => before + 1), []);
  const stop = useCallback(() => {
    worker.current?.terminate();
    setRun((before) => ({ ...before, stage: 'stopped', progress: null }));
  }, []);
  return { run, layAnew, stop };
}
