import { useEffect, useRef } from 'react';
import { percent } from '../../../../boards/base/percent';
import { CAUSES } from '../../../../boards/diagnosis/faults/causes';
import { contradictionWords, NONE_LIKELIEST } from '../../../../boards/diagnosis/words';
import { Button } from '../../../look/button';
import { NOTHING_SAID } from '../../../words/trouble-words';
import { useSession, useWorkbench } from '../../../workbench';
import type { Diagnosis } from '../use-diagnosis';
import { Reasons } from './reasons';
import { SuspectBoard } from './suspect-board';
import { SuspectList } from './suspect-list';

/** What may be wrong, by how likely it is; the reasons for the chosen one; where on the board it sits. */
export function SuspectsPane({ diagnosis }: { readonly diagnosis: Diagnosis }) {
  const { reckoning, state, pairs, stop, again, lines } = diagnosis;
  const chosen = useSession(({ suspect }) => suspect);
  const suspects = reckoning?.suspects ?? [];
  const shown = suspects.find(({ cause }) => cause === chosen) ?? suspects[0];
  const nothingSaid = !lines.some(({ counts }) => counts);
  useFirstAnnounced(diagnosis);
  return (
    <main className="suspects-pane" aria-label="Suspects" aria-busy={state !== 'ready'}>
      <header className="panel-head">
        <h2>What it may be</h2>
        <p className="soft small">likeliest first</p>
      </header>
      <div className="suspects-scroll">
        {(state === 'long' || state === 'stopped') && (
          <div className="suspects-wait" role="status">
            <p>
              {state === 'stopped'
                ? 'Stopped. What stands here is of what was said before.'
                : pairs === null
                  ? 'Working out what each fault would show on this build.'
                  : `One fault alone explains it badly. Working out two at once: ${percent(pairs)}.`}
            </p>
            <Button onPress={state === 'stopped' ? again : stop}>
              {state === 'stopped' ? 'Go on' : 'Stop'}
            </Button>
          </div>
        )}
        {reckoning === null && state === 'working' && <p className="suspects-note soft">One moment.</p>}
        {reckoning && nothingSaid && <p className="suspects-note">{NOTHING_SAID}</p>}
        {reckoning?.noneLikeliest && (
          <p className="suspects-note suspects-none" role="note">
            {NONE_LIKELIEST}
          </p>
        )}
        {(reckoning ? contradictionWords(reckoning) : []).map((words) => (
          <p key={words} className="suspects-note suspects-none" role="note">
            {words}
          </p>
        ))}
        {reckoning && shown && (
          <>
            <SuspectList build={diagnosis.build} reckoning={reckoning} shown={shown.cause} />
            <Reasons diagnosis={diagnosis} suspect={shown} />
          </>
        )}
      </div>
      <SuspectBoard suspects={suspects} shown={shown} />
    </main>
  );
}

/** Says aloud what is likeliest once it has become another; nothing at the first look. */
function useFirstAnnounced(diagnosis: Diagnosis): void {
  const { session } = useWorkbench();
  const { reckoning, state } = diagnosis;
  const [first] = reckoning?.suspects ?? [];
  const none = reckoning?.noneLikeliest === true;
  const words =
    first === undefined || state !== 'ready'
      ? null
      : none
        ? NONE_LIKELIEST
        : `Likeliest now: ${CAUSES[first.cause]}, ${percent(first.chance)}.`;
  const key = none ? 'none' : first?.cause;
  const before = useRef<string | undefined>(undefined);
  useEffect(() => {
    if (words === null || before.current === key) return;
    const isFirstLook = before.current === undefined;
    before.current = key;
    if (isFirstLook) return;
    const { announcement, announce } = session.getState();
    announce(`${announcement.text} ${words}`.trim());
  }, [session, words, key]);
}
