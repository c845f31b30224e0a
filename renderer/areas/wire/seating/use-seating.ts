import { useCallback, useEffect, useRef, useState } from 'react';
import type { PlugRef } from '../../../../boards/document/lookup';
import { useWorkbench } from '../../../workbench';
import type { SeatingTold } from './seating-messages';
import { afterTold, NOT_YET, type SeatingRun, startedAnew } from './seating-run';
import workerAddress from './seating-worker?worker&url';

export interface Seating {
  readonly run: SeatingRun;
  readonly planAnew: () => void;
  readonly stop: () => void;
}

/** Works out the best seating of the open build off the main thread: at once, when a plug is kept or not, when asked. */
export function useSeating(kept: readonly PlugRef[]): Seating {
  const { editor } = useWorkbench();
  const [run, setRun] = useState(NOT_YET);
  const [round, setRound] = useState(0);
  const worker = useRef<Worker | null>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: every round asks anew
  useEffect(() => {
    const build = editor.getState().open?.history.present;
    if (build === undefined) return;
    const ask = { build, pinned: kept };
    const working = new Worker(workerAddress, { type: 'module' });
    worker.current = working;
    setRun(startedAnew);
    working.addEventListener('message', ({ data }: MessageEvent<SeatingTold>) => {
      setRun((before) => afterTold(before, ask, data));
    });
    working.addEventListener('error', () => {
      setRun((before) => ({ ...before, stage: 'failed', progress: null }));
    });
    working.postMessage(ask);
    return () => working.terminate();
  }, [editor, kept, round]);

  const planAnew = useCallback(() => setRound((before) => before + 1), []);
  const stop = useCallback(() => {
    worker.current?.terminate();
    setRun((before) => ({ ...before, stage: 'stopped', progress: null }));
  }, []);
  return { run, planAnew, stop };
}
