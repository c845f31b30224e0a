import { useEffect, useState } from 'react';
import { type OpenedSheet, openSheet } from '../../files/library-work';
import type { ListedSheet } from '../../files/read-library';
import { useWorkbench } from '../../workbench';

interface Reading {
  readonly handle: string;
  readonly modifiedMs: number;
  readonly opened: OpenedSheet | null;
}

/**
 * The chosen sheet in full. Null until that very file has been read as it is listed: what was read of another must
 * not be taken for it meanwhile.
 */
export function useOpened(listed: ListedSheet | undefined): OpenedSheet | null {
  const workbench = useWorkbench();
  const [last, setLast] = useState<Reading | null>(null);
  const { handle, modifiedMs } = listed?.head?.outcome === 'sheet' ? listed : NOTHING;
  useEffect(() => {
    if (handle === null) return;
    let gone = false;
    const read = async () => {
      const opened = await openSheet(workbench, handle);
      if (!gone) setLast({ handle, modifiedMs, opened });
    };
    void read();
    return () => {
      gone = true;
    };
  }, [workbench, handle, modifiedMs]);
  return last?.handle === handle && last.modifiedMs === modifiedMs ? last.opened : null;
}

const NOTHING = { handle: null, modifiedMs: 0 } as const;
