import { X } from 'lucide-react';
import { useCallback, useEffect, useState } from 'react';
import type { Output } from '../../boards/host';
import { Button, IconButton } from '../look/button';
import { useWorkbench } from '../workbench';
import { openHandle } from './open-document';
import './recent-files.css';

type Recent = Output<'listRecent'>;

interface RecentFilesProps {
  /** Shown where nothing was worked on yet. */
  readonly empty?: string;
  readonly onOpen?: () => void;
}

/** What was worked on last. Missing files are shown as such, and any can be taken off the list. */
export function RecentFiles({ empty, onOpen }: RecentFilesProps) {
  const workbench = useWorkbench();
  const { host } = workbench;
  const [recent, setRecent] = useState<Recent>([]);
  const load = useCallback(async () => setRecent(await host.listRecent()), [host]);
  useEffect(() => void load(), [load]);
  if (recent.length === 0) return empty === undefined ? null : <p>{empty}</p>;

  const forget = async (handle: string | null) => {
    await host.forgetRecent({ handle });
    await load();
  };
  return (
    <section aria-labelledby="recent-title">
      <div className="recent-head">
        <h2 id="recent-title">Worked on last</h2>
        <Button kind="link" onPress={() => void forget(null)}>
          Clear the list
        </Button>
      </div>
      <ul className="recent">
        {recent.map(({ handle, name, folder, missing }) => (
          <li key={handle}>
            <Button
              kind="quiet"
              disabled={missing}
              onPress={() => {
                onOpen?.();
                void openHandle(workbench, handle);
              }}
            >
              <span className="option-words">
                <span>{name}</span>
                <span className="soft small">{missing ? `no longer in ${folder}` : folder}</span>
              </span>
            </Button>
            <IconButton
              label={`Take ${name} off the list`}
              icon={<X size={16} aria-hidden="true" />}
              onPress={() => void forget(handle)}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}
