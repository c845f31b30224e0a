import { useEffect, useRef } from 'react';
import type { Build } from '../../../../boards/document/build';
import { lengthWords } from '../../../../boards/routing/fill/length-words';
import type { AsLaid, LaidRun } from '../../../../boards/routing/laid/as-laid';
import { endName, spotName } from '../../../../boards/routing/laid/end-names';
import { wayBegun } from '../../../../boards/routing/laid/way-choosing';
import { Button } from '../../../look/button';
import { useSession, useWorkbench } from '../../../workbench';
import { goAlong, goBack } from './cable-moves';

interface WayEditorProps {
  readonly build: Build;
  readonly laid: AsLaid;
  readonly run: LaidRun;
}

/** A way chosen place by place: pressed on the map, or taken from the list of where it can go on to. */
export function WayEditor({ build, laid: { laying }, run }: WayEditorProps) {
  const workbench = useWorkbench();
  const draft = useSession(({ wayDraft }) => wayDraft);
  const list = useRef<HTMLFieldSetElement>(null);
  const steps = draft?.paths.length ?? 0;
  // The place that was chosen is no longer in the list.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another step is the sign to look
  useEffect(() => {
    list.current?.querySelector<HTMLElement>('button')?.focus();
  }, [steps]);
  const begun = draft && run.cable && wayBegun(laying, run.cable, draft.paths);
  if (!draft || !begun || !run.cable) return null;
  const passed = draft.paths.map((_, at) => {
    const here = run.cable && wayBegun(laying, run.cable, draft.paths.slice(0, at + 1));
    return here ? spotName(build, here.at) : '';
  });
  const near = endName(build, run.lead, run.run.from);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape ends it wherever the focus is inside
    <div
      className="cable-part way-editor"
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        workbench.session.getState().draftWay(null);
      }}
    >
      <h3>Choose its way</h3>
      <p className="soft small">
        Press one place after another on the map, or take the next one here. At{' '}
        {endName(build, run.lead, run.run.to)} it is laid.
      </p>
      <p>
        {[near, ...passed].join(' – ')}
        {draft.paths.length > 0 && <span className="soft">, {lengthWords(begun.totalMm)} so far</span>}
      </p>
      <fieldset ref={list} className="way-next" aria-label="Go on to">
        {begun.next.map(({ path, place, side, lengthMm }) => (
          <Button key={path} onPress={() => goAlong(workbench, path)}>
            {spotName(build, place)}, {lengthWords(lengthMm)} on the {side}
          </Button>
        ))}
        {begun.next.length === 0 && <p>Nothing leads on from here. Go back, and another way.</p>}
      </fieldset>
      <div className="cable-doings">
        <Button disabled={draft.paths.length === 0} onPress={() => goBack(workbench)}>
          One place back
        </Button>
        <Button onPress={() => workbench.session.getState().draftWay(null)}>Leave it as it was</Button>
      </div>
    </div>
  );
}
