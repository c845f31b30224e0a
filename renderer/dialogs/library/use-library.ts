import { useCallback, useEffect, useRef, useState } from 'react';
import { type ReadLibrary, readLibrary } from '../../files/read-library';
import type { Message } from '../../store/dialog';
import { libraryProblemWords } from '../../words/library-words';
import { useWorkbench } from '../../workbench';

export interface LibraryInHand {
  /** As far as it has been read; null before anything is known. */
  readonly library: ReadLibrary | null;
  readonly problem: Message | null;
  readonly reading: boolean;
  /** Reads it anew; gives the whole of it, or null where it was stopped or cannot be read. */
  readonly reload: () => Promise<ReadLibrary | null>;
  readonly stop: () => void;
}

/** The library while a window shows it. Reading goes on in steps, and ends with the window. */
export function useLibrary(): LibraryInHand {
  const { host } = useWorkbench();
  const [library, setLibrary] = useState<ReadLibrary | null>(null);
  const [problem, setProblem] = useState<Message | null>(null);
  const [reading, setReading] = useState(true);
  /** The reading that counts; whoever finds another one here has been stopped. */
  const current = useRef(0);

  const stop = useCallback(() => {
    current.current++;
    setReading(false);
  }, []);
  const reload = useCallback(async () => {
    const mine = ++current.current;
    const isStopped = () => current.current !== mine;
    setReading(true);
    const read = await readLibrary(host, (soFar) => !isStopped() && setLibrary(soFar), isStopped);
    if (isStopped()) return null;
    setReading(false);
    setProblem(read.ok ? null : libraryProblemWords(read.problem));
    setLibrary(read.ok ? read.value : null);
    return read.ok ? read.value : null;
  }, [host]);
  useEffect(
    () => () => {
      current.current++;
    },
    [],
  );
  return { library, problem, reading, reload, stop };
}
