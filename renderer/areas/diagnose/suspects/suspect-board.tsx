import { memo, Suspense, useEffect, useMemo } from 'react';
import { listed } from '../../../../boards/base/listed';
import type { Suspect } from '../../../../boards/diagnosis/log/reckoning';
import type { Build } from '../../../../boards/document/build';
import { leadName } from '../../../../boards/document/names';
import type { Mark, Target } from '../../../canvas/canvas-props';
import { usePart } from '../../../fetched';
import { useReducedMotion, useShownTheme } from '../../../look/use-media';
import type { Selection } from '../../../store/session';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { BOARD_CANVAS } from '../../wire/board-canvas-part';

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
  const build = useBuild();
  const theme = useShownTheme(useSession((state) => state.settings.theme));
  const reducedMotion = useReducedMotion();
  const leads = leadsWithPlace(build, shown);
  const marks = useMemo(() => marksOf(suspects), [suspects]);
  const key = leads.join(' ');
  const selection = useMemo((): Selection => {
    if (key === '') return { kind: 'nothing' };
    return { kind: 'finding', id: `suspect ${key}`, pins: [], leads: key.split(' ') };
  }, [key]);
  useEffect(() => {
    const connectors = new Set(
      build.seats.filter(({ lead }) => key.split(' ').includes(lead)).map(({ connector }) => connector),
    );
    if (connectors.size > 0) canvas.current?.show([...connectors]);
  }, [key, build.seats, canvas]);
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
      <p className="suspect-place small">
        {leads.length === 0
          ? 'This suspect has no place among the leads of this build.'
          : `Outlined: ${listed(leads.map((lead) => leadName(build, lead)))}.`}
      </p>
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
            theme={theme}
            reducedMotion={reducedMotion}
            {...listeners}
          />
        </div>
      </div>
    </section>
  );
}

/** The leads of the build that the likeliest faults of a suspect are about. */
function leadsWithPlace(build: Build, suspect: Suspect | undefined): readonly string[] {
  const [first] = suspect?.faults ?? [];
  const worth = (suspect?.faults ?? []).filter(({ chance }) => chance >= (first?.chance ?? 0) / 3);
  return [...new Set(worth.flatMap(({ lead }) => lead ?? []))].filter((lead) =>
    build.seats.some((seat) => seat.lead === lead),
  );
}

function marksOf(suspects: readonly Suspect[]): readonly Mark[] {
  const leads = new Set(
    suspects.flatMap(({ faults }) =>
      faults.flatMap(({ lead, chance }) => (lead !== undefined && chance >= MARKED_FROM ? [lead] : [])),
    ),
  );
  return [...leads].map((lead) => ({ severity: 'doubt', pins: [], leads: [lead] }));
}
