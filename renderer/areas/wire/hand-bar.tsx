import { ChevronLeft, ChevronRight, RotateCw, X } from 'lucide-react';
import { useEffect, useMemo, useRef } from 'react';
import { Button, IconButton } from '../../look/button';
import type { Placing } from '../../store/session';
import { useBuild, useWorkbench } from '../../workbench';
import { consequenceWords, fitWords, placeWords } from './placing/candidate-words';
import { cancelHand, plugTitleOf, pressKey, seatHand } from './placing/hand';
import { previewSeat } from './placing/preview';
import './hand-bar.css';

/** The plug in the hand: takes the arrow keys, and says where it is and what would come of it. */
export function HandBar({ placing }: { readonly placing: Placing }) {
  const workbench = useWorkbench();
  const build = useBuild();
  const bar = useRef<HTMLDivElement>(null);
  const { candidate, plug } = placing;
  const preview = useMemo(() => candidate && previewSeat(build, candidate), [build, candidate]);
  const title = plugTitleOf(build, plug);

  useEffect(() => {
    bar.current?.focus({ preventScroll: true });
  }, []);

  return (
    <div
      ref={bar}
      className="hand-bar"
      role="application"
      aria-label={`${title} in the hand. Arrows move it, Page Up and Page Down change the connector, R turns it, Enter seats it, Escape puts it back.`}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes the arrow keys for the plug in the hand
      tabIndex={0}
    >
      <div className="hand-bar-words">
        <p>
          <span className="mono lead-name">{title}</span>{' '}
          {candidate ? placeWords(build, candidate) : 'Bring it over a connector.'}
        </p>
        <p className={preview && preview.fit.refusals.length > 0 ? 'hand-bar-refusal' : 'soft'}>
          {preview ? `${fitWords(build, preview)} ${consequenceWords(preview)}` : '\u00a0'}
        </p>
      </div>
      <div className="hand-bar-doings">
        <IconButton
          label="Connector before"
          keys="Page Up"
          icon={<ChevronLeft size={18} aria-hidden="true" />}
          onPress={() => pressKey(workbench, { kind: 'connector', by: -1 })}
        />
        <IconButton
          label="Next connector"
          keys="Page Down"
          icon={<ChevronRight size={18} aria-hidden="true" />}
          onPress={() => pressKey(workbench, { kind: 'connector', by: 1 })}
        />
        <IconButton
          label="Turn"
          keys="R"
          icon={<RotateCw size={18} aria-hidden="true" />}
          onPress={() => pressKey(workbench, { kind: 'turn', by: 1 })}
        />
        <Button
          kind="main"
          disabled={preview === null || preview.fit.refusals.length > 0}
          onPress={() => seatHand(workbench)}
        >
          Seat here
        </Button>
        <IconButton
          label="Put back"
          keys="Escape"
          icon={<X size={18} aria-hidden="true" />}
          onPress={() => cancelHand(workbench)}
        />
      </div>
    </div>
  );
}
