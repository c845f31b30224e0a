import { memo, Suspense, useEffect, useMemo } from 'react';
import { byIdentity } from '../../../../boards/base/by-identity';
import type { Suspect } from '../../../../boards/diagnosis/log/reckoning';
import type { Build } from '../../../../boards/document/build';
import { wiringOf } from '../../../../boards/fit/seated-plug';
import type { Mark, Suspected, Target } from '../../../canvas/canvas-props';
import { usePart } from '../../../fetched';
import { useReducedMotion, useShownTheme } from '../../../look/use-media';
import type { Selection } from '../../../store/session';
import { DASHED_LABELS } from '../../../words/suspected-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { BOARD_CANVAS } from '../../wire/board-canvas-part';
import { placeWords } from './place-words';
import { type SuspectedPlace, suspectedPlace } from './suspected-place';

interface SuspectBoardProps {
  readonly suspects: readonly Suspect[];
  readonly shown: Suspect | undefined;
}

/** A fault that is less likely than this is not marked on the board. */
const MARKED_FROM = 0.05;

/** The board with what is suspected marked on it, and the shown suspect outlined where it sits. */
export const SuspectBoard = memo(function SuspectBoard(props: SuspectBoardProps) {
  return (
    <Suspense fallback={<div className="suspect-board" />}>
      <Board {...props} />
    </Suspense>
  );
});

function Board({ suspects, shown }: SuspectBoardProps) {
  const BoardCanvas = usePart(BOARD_CANVAS);
  const { session, canvas } = useWorkbench();
  const build = drawnOnce(useBuild());
  const theme = useShownTheme(useSession((state) => state.settings.theme));
  const reducedMotion = useReducedMotion();
  const place = useMemo(() => suspectedPlace(build, shown?.faults[0]), [build, shown]);
  const leads = leadsWithPlace(build, shown, place);
  const words = shown === undefined ? '' : placeWords(build, leads, place);
  const suspected = useMemo(() => suspectedOn(place, words), [place, words]);
  const marks = useMemo(() => marksOf(suspects), [suspects]);
  const key = leads.join(' ');
  const selection = useMemo((): Selection => {
    if (key === '') return { kind: 'nothing' };
    return { kind: 'finding', id: `suspect ${key}`, pins: [], leads: key.split(' ') };
  }, [key]);
  useEffect(() => {
    const connectors = [
      ...build.seats.filter(({ lead }) => key.split(' ').includes(lead)),
      ...(suspected?.seats ?? []),
    ].map(({ connector }) => connector);
    if (connectors.length > 0) canvas.current?.bring([...new Set(connectors)]);
  }, [key, suspected, build.seats, canvas]);
  const listeners = useMemo(
    () => ({
      onSelect: (target: Target | null) => {
        const lead = target && 'plug' in target ? target.plug.lead : undefined;
        const cause = suspects.find(({ faults }) => faults.some((fault) => fault.lead === lead))?.cause;
        if (lead !== undefined && cause !== undefined) session.getState().showSuspect(cause);
      },
      onHover: (target: Target | null) => session.getState().hover(target),
      onGrab: () => undefined,
      onCandidate: () => undefined,
      onRelease: () => undefined,
    }),
    [session, suspects],
  );
  return (
    <section className="suspect-board" aria-label="Where it sits">
      <p className="suspect-place small">{words}</p>
      <div className="canvas-pane">
        <div className="canvas-hold">
          <BoardCanvas
            ref={canvas}
            build={build}
            marks={marks}
            live={null}
            selection={selection}
            placing={null}
            planned={null}
            suspected={suspected}
            fitsAgain
            theme={theme}
            reducedMotion={reducedMotion}
            {...listeners}
          />
        </div>
      </div>
    </section>
  );
}

/** An answer changes nothing that is drawn: the drawing stays, and what it was worked out from. */
const drawnOnce = byIdentity(
  (build: Build) => build,
  (build) => [...wiringOf(build), build.board, build.view],
);

/** The leads of the build that the likeliest faults of a suspect are about; where plugs changed places, these alone. */
function leadsWithPlace(
  build: Build,
  suspect: Suspect | undefined,
  place: SuspectedPlace | undefined,
): readonly string[] {
  if (place?.kind === 'exchanged') return place.seats.map(({ lead }) => lead);
  const [first] = suspect?.faults ?? [];
  const worth = (suspect?.faults ?? []).filter(({ chance }) => chance >= (first?.chance ?? 0) / 3);
  return [...new Set(worth.flatMap(({ lead }) => lead ?? []))].filter((lead) =>
    build.seats.some((seat) => seat.lead === lead),
  );
}

function suspectedOn(place: SuspectedPlace | undefined, words: string): Suspected | null {
  switch (place?.kind) {
    case 'moved':
      return { seats: [place.seat], off: [], label: DASHED_LABELS.moved, words };
    case 'exchanged':
      return { seats: place.seats, off: [], label: DASHED_LABELS.exchanged, words };
    case 'off':
      return { seats: [], off: [place.plug], label: DASHED_LABELS.off, words };
    case 'as-written':
    case undefined:
      return null;
  }
}

function marksOf(suspects: readonly Suspect[]): readonly Mark[] {
  const leads = new Set(
    suspects.flatMap(({ faults }) =>
      faults.flatMap(({ lead, chance }) => (lead !== undefined && chance >= MARKED_FROM ? [lead] : [])),
    ),
  );
  return [...leads].map((lead) => ({ severity: 'doubt', pins: [], leads: [lead] }));
}
