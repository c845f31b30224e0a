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
  const { build, believed, why, awaited, state, lines } = diagnosis;
  const chosen = useSession(({ suspect }) => suspect);
  const suspects = believed?.suspects ?? [];
  const shown = suspects.find(({ cause }) => cause === chosen) ?? suspects[0];
  const nothingSaid = !lines.some(({ counts }) => counts);
  useFirstAnnounced(diagnosis);
  return (
    <main className="suspects-pane" aria-label="Suspects" aria-busy={awaited.has('suspects')}>
      <header className="panel-head">
        <h2>What it may be</h2>
        <p className="soft small">likeliest first</p>
      </header>
      <div className="suspects-scroll">
        {believed === null && state === 'working' && <p className="suspects-note soft">One moment.</p>}
        {believed && nothingSaid && <p className="suspects-note">{NOTHING_SAID}</p>}
        {believed?.noneLikeliest && (
          <p className="suspects-note suspects-none" role="note">
            {NONE_LIKELIEST}
          </p>
        )}
        {(believed ? contradictionWords(believed) : []).map((words) => (
          <p key={words} className="suspects-note suspects-none" role="note">
            {words}
          </p>
        ))}
        {believed && shown && (
          <>
            <SuspectList build={build} believed={believed} shown={shown.cause} />
            <Reasons build={build} why={why} awaited={awaited.has('reasons')} suspect={shown} />
          </>
        )}
        <Wait diagnosis={diagnosis} />
      </div>
      <SuspectBoard suspects={suspects} shown={shown} />
    </main>
  );
}

/** What it waits for, once that takes long: below everything else, so that nothing moves when it comes. */
function Wait({ diagnosis: { awaited, state, pairs, stop, again } }: { readonly diagnosis: Diagnosis }) {
  if (state !== 'long' && state !== 'stopped') return null;
  const what = awaited.has('suspects')
    ? pairs === null
      ? 'Working out what each fault would show on this build.'
      : `One fault alone explains it badly. Working out two at once: ${percent(pairs)}.`
    : 'Working out the reasons and what to do next.';
  return (
    <div className="suspects-wait" role="status">
      <p>{state === 'stopped' ? 'Stopped. Not all that stands here is of what was said last.' : what}</p>
      <Button onPress={state === 'stopped' ? again : stop}>{state === 'stopped' ? 'Go on' : 'Stop'}</Button>
    </div>
  );
}

/** Says aloud what is likeliest once it has become another; nothing at the first look. */
function useFirstAnnounced(diagnosis: Diagnosis): void {
  const { session } = useWorkbench();
  const { believed, awaited } = diagnosis;
  const [first] = believed?.suspects ?? [];
  const none = believed?.noneLikeliest === true;
  const words =
    first === undefined || awaited.has('suspects')
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
