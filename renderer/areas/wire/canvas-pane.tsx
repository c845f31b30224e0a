import { useCallback, useMemo } from 'react';
import type { Build, Seat } from '../../../boards/document/build';
import { connectorOf, plugOf, sameSeat, seatOf } from '../../../boards/document/lookup';
import type { CanvasView, Target } from '../../canvas/canvas-props';
import { usePart } from '../../fetched';
import { useReducedMotion, useShownTheme } from '../../look/use-media';
import type { Selection } from '../../store/session';
import { useBuild, useSession, useWorkbench } from '../../workbench';
import { BOARD_CANVAS } from './board-canvas-part';
import { HandBar } from './hand-bar';
import { marksOf } from './marks';
import { drag, seatHand } from './placing/hand';
import { useHandKeys } from './placing/use-hand-keys';
import { liveOf } from './power/chosen-way';
import { useChosenWay } from './power/use-chosen-way';
import { useDrawn } from './use-drawn';

/** The board in the middle, and the plug in the hand over it. */
export function CanvasPane() {
  const BoardCanvas = usePart(BOARD_CANVAS);
  const workbench = useWorkbench();
  const { session } = workbench;
  const build = useBuild();
  const drawn = useDrawn(build);
  const selection = useSession((state) => state.selection);
  const placing = useSession((state) => state.placing);
  const plannedSeat = useSession((state) => state.planned);
  const theme = useShownTheme(useSession((state) => state.settings.theme));
  const reducedMotion = useReducedMotion();
  const way = useChosenWay();
  const live = useMemo(() => liveOf(build, way), [build, way]);
  useHandKeys(placing?.by);
  const onCanvas = useCallback(
    (canvas: CanvasView | null) => {
      workbench.canvas.current = canvas;
      const { sought } = session.getState();
      if (sought.length > 0) canvas?.show(sought);
    },
    [session, workbench],
  );

  const listeners = useMemo(
    () => ({
      onSelect: (target: Target | null) => session.getState().select(selectionOf(target)),
      onHover: (target: Target | null) => session.getState().hover(target),
      onGrab: (plug: { readonly lead: string; readonly plug: string }) => drag(workbench, plug),
      onCandidate: session.getState().aim,
      onRelease: () => seatHand(workbench),
    }),
    [session, workbench],
  );

  return (
    <main className="canvas-pane" aria-label="Board">
      <div className="canvas-hold">
        {drawn && (
          <BoardCanvas
            ref={onCanvas}
            build={build}
            marks={marksOf(build)}
            live={live}
            selection={selection}
            placing={placing}
            planned={plannedIn(build, plannedSeat)}
            theme={theme}
            reducedMotion={reducedMotion}
            {...listeners}
          />
        )}
      </div>
      {placing?.by === 'carry' && <HandBar placing={placing} />}
    </main>
  );
}

function selectionOf(target: Target | null): Selection {
  if (target === null) return { kind: 'nothing' };
  switch (target.kind) {
    case 'plug':
    case 'wire':
    case 'on-tray':
      return target;
    case 'pin':
      return { kind: 'connector', ...target.pin };
    case 'connector':
      return target;
  }
}

/** The planned seat, while what it names is there and it is not where the plug sits already. */
function plannedIn(build: Build, planned: Seat | null): Seat | null {
  if (planned === null) return null;
  const now = seatOf(build, planned);
  const there = plugOf(build, planned) && connectorOf(build.board, planned.connector);
  return there && !(now && sameSeat(now, planned)) ? planned : null;
}
