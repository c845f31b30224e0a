import { useEffect, useState } from 'react';
import type { KnownLayout } from '../../../../boards/pinout/looks-like/known-layout';
import { type OwnReading, readOwnLayouts } from '../../../files/own-layouts';
import { readProblemWords } from '../../../words/host-words';
import { counted } from '../../../words/list-words';
import { useWorkbench } from '../../../workbench';

const NONE: readonly KnownLayout[] = [];

/**
 * The connectors of the person's own sheets, and in words how far they have been read. They come all at
 * once, so that the list moves once at most; closing the window stops the reading.
 */
export function useOwnLayouts(): { readonly layouts: readonly KnownLayout[]; readonly words: string } {
  const { host } = useWorkbench();
  const [layouts, setLayouts] = useState(NONE);
  const [words, setWords] = useState('Looking for your own sheets…');
  useEffect(() => {
    let stopped = false;
    const step = (done: number, of: number) => setWords(`Your own sheets: ${done} of ${of} read…`);
    void readOwnLayouts(host, step, () => stopped).then((reading) => {
      if (stopped) return;
      setWords(readWords(reading));
      if (reading.ok) setLayouts(reading.value.layouts);
    });
    return () => {
      stopped = true;
    };
  }, [host]);
  return { layouts, words };
}

function readWords(reading: OwnReading): string {
  if (!reading.ok) return `Without your own sheets: ${readProblemWords(reading.problem).title}.`;
  const { sheets, unread } = reading.value;
  const read =
    sheets === 0
      ? 'You have no board sheets of your own yet.'
      : `With ${counted(sheets, 'board sheet')} of your own.`;
  return unread === 0 ? read : `${read} ${counted(unread, 'file')} could not be read.`;
}
