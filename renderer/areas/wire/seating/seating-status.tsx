import { useEffect, useRef } from 'react';
import { Button } from '../../../look/button';
import { differencesWords, foundWords, noPlanWords, progressWords } from '../../../words/seating-words';
import { useWorkbench } from '../../../workbench';
import type { FoundSeating, SeatingRun } from './seating-run';

interface SeatingStatusProps {
  readonly run: SeatingRun;
  /** What is true of the wiring as it is. */
  readonly found: FoundSeating | null;
  readonly differences: number;
  readonly onAnew: () => void;
  readonly onStop: () => void;
}

/** How the search stands or what it found; it can be stopped, and started again. */
export function SeatingStatus({ run, found, differences, onAnew, onStop }: SeatingStatusProps) {
  const working = run.stage === 'working';
  const said = found ? foundWords(found) : noPlanWords(run);
  useAnnounced(working && run.progress?.stage !== 'remedies' ? '' : resultWords(said, found, differences));
  return (
    <div className="seating-status">
      {found && <p>{said}</p>}
      {working && <p className={found ? 'soft small' : ''}>{progressWords(run.progress)}</p>}
      {!working && !found && <p>{said}</p>}
      {!working && found && differences === 0 && found.plan.seats.length > 0 && (
        <p>{differencesWords(differences)}</p>
      )}
      {working && <Button onPress={onStop}>Stop</Button>}
      {!working && (!found || run.stage !== 'done') && (
        <Button kind="main" onPress={onAnew}>
          Plan anew
        </Button>
      )}
    </div>
  );
}

function resultWords(said: string, found: FoundSeating | null, differences: number): string {
  return found && found.plan.seats.length > 0 ? `${said} ${differencesWords(differences)}` : said;
}

/** Says a result once it is there, and what becomes of it. */
function useAnnounced(words: string): void {
  const { session } = useWorkbench();
  const before = useRef('');
  useEffect(() => {
    if (before.current === words) return;
    before.current = words;
    if (words !== '') session.getState().announce(words);
  }, [session, words]);
}
