import { useEffect, useState } from 'react';
import type { Version } from '../../boards/host';
import { openVersion, versionsOfOpen, versionWords } from '../files/versions';
import { Button } from '../look/button';
import { Window } from '../look/window';
import { whenWords } from '../words/time-words';
import { useEditor, useWorkbench } from '../workbench';
import './versions.css';

/** What the file held before, with dates; each can be opened as unsaved work. */
export function VersionsDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const name = useEditor(({ open }) => open?.file.name ?? '');
  const [versions, setVersions] = useState<readonly Version[] | null>(null);
  const [words, setWords] = useState<ReadonlyMap<string, string>>(new Map());
  useEffect(() => {
    let stopped = false;
    const look = async () => {
      const found = await versionsOfOpen(workbench);
      if (!stopped) setVersions(found);
      // One after the other: each is a whole build, and the window may be closed again meanwhile.
      for (const version of found) {
        if (stopped) return;
        const said = await versionWords(workbench, version);
        setWords((before) => new Map(before).set(version.id, said));
      }
    };
    void look();
    return () => {
      stopped = true;
    };
  }, [workbench]);

  return (
    <Window title={`Earlier versions of ${name}`} onClose={onClose}>
      <p className="soft">
        Each save keeps a version apart from the file: up to fifty, of saves within five minutes the last. One
        that you open is unsaved work; the file stays as it is until you save.
      </p>
      {versions?.length === 0 && <p>There is none yet. The next save keeps the first.</p>}
      <ul className="versions">
        {versions?.map((version) => {
          const when = whenWords(version.savedMs, Date.now());
          return (
            <li key={version.id}>
              <span className="option-words">
                <span>Saved {when}</span>
                <span className="soft small">{words.get(version.id) ?? '…'}</span>
              </span>
              <Button
                label={`Open as it was saved ${when}`}
                onPress={() => {
                  onClose();
                  void openVersion(workbench, version);
                }}
              >
                Open
              </Button>
            </li>
          );
        })}
      </ul>
    </Window>
  );
}
