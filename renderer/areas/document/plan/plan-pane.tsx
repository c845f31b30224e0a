import { type KeyboardEvent, Suspense, useMemo } from 'react';
import { boardRemarks } from '../../../../boards/fit/board-remarks';
import type { Target } from '../../../canvas/canvas-props';
import { usePart } from '../../../fetched';
import { KeyPane } from '../../../look/key-pane';
import { useShownTheme } from '../../../look/use-media';
import type { Moving } from '../../../store/session';
import { useBuild, useSession, useWorkbench, type Workbench } from '../../../workbench';
import { PLAN_CANVAS } from './plan-canvas-part';
import { planKey } from './plan-keys';
import { cancel, copy, drop, nudge, openPins, paste, remove, turn, walk } from './plan-moves';

const KEYS =
  'Tab goes from connector to connector, arrows move the chosen one, Shift moves it further and Alt less, R turns it, Delete removes it, Enter opens its pins, Escape and then Tab leaves the plan';

/** The board in the middle of the page: the pointer and the keys place connectors on it. */
export function PlanPane() {
  const workbench = useWorkbench();
  return (
    <KeyPane
      label={`Board plan. ${KEYS}.`}
      onKey={(press) => onKey(workbench, press)}
      onSettle={() => drop(workbench)}
    >
      <Suspense fallback={null}>
        <Drawing />
      </Suspense>
    </KeyPane>
  );
}

function Drawing() {
  const PlanCanvas = usePart(PLAN_CANVAS);
  const workbench = useWorkbench();
  const { session } = workbench;
  const build = useBuild();
  const chosen = useSession(({ selection }) => (selection.kind === 'connector' ? selection.connector : null));
  const moving = useSession((state) => state.moving);
  const step = useSession((state) => state.planStep);
  const theme = useShownTheme(useSession((state) => state.settings.theme));
  const listeners = useMemo(() => {
    const choose = (connector: string | null) =>
      session.getState().select(connector === null ? { kind: 'nothing' } : { kind: 'connector', connector });
    return {
      onChoose: choose,
      onHover: (target: Target | null) => session.getState().hover(target),
      onOpen: (connector: string) => {
        choose(connector);
        session.getState().showPage('connector');
      },
      onMove: (next: Moving | null) => session.getState().move(next),
      onDrop: () => drop(workbench),
    };
  }, [session, workbench]);
  return (
    <PlanCanvas
      ref={workbench.canvas}
      build={build}
      chosen={chosen}
      moving={moving}
      step={step}
      remarks={boardRemarks(build.board)}
      theme={theme}
      {...listeners}
    />
  );
}

function onKey(workbench: Workbench, press: KeyboardEvent): boolean {
  const key = planKey(press);
  if (key === undefined || workbench.session.getState().dialogs.length > 0) return false;
  switch (key.kind) {
    case 'walk':
      // Past the last connector Tab is an ordinary Tab.
      return walk(workbench, key.by);
    case 'nudge':
      nudge(workbench, key.xMm, key.yMm);
      break;
    case 'turn':
      turn(workbench, key.by);
      break;
    case 'remove':
      remove(workbench);
      break;
    case 'copy':
      copy(workbench);
      break;
    case 'paste':
      paste(workbench);
      break;
    case 'open':
      openPins(workbench);
      break;
    case 'cancel':
      cancel(workbench);
  }
  return true;
}
