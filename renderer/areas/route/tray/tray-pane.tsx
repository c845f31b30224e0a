import { type KeyboardEvent, Suspense, useEffect, useMemo, useRef } from 'react';
import type { Lead } from '../../../../boards/document/lead';
import type { Tray } from '../../../../boards/document/tray';
import type { Point } from '../../../../boards/drawing/geometry';
import { type AsLaid, asLaid } from '../../../../boards/routing/laid/as-laid';
import { cableFamilyOf } from '../../../../boards/routing/laid/cable-family';
import { runId } from '../../../../boards/routing/laid/laying-ids';
import { wayBegun } from '../../../../boards/routing/laid/way-choosing';
import type { Target } from '../../../canvas/canvas-props';
import type { TrayTarget } from '../../../canvas/tray/tray-hits';
import type { WayShown } from '../../../canvas/tray/tray-props';
import { usePart } from '../../../fetched';
import { KeyPane } from '../../../look/key-pane';
import { useShownTheme } from '../../../look/use-media';
import type { Selection, TrayDraft, TrayPart, TrayTool, WayDraft } from '../../../store/session';
import { mapWords } from '../../../words/tray-words';
import { useBuild, useSession, useWorkbench, type Workbench } from '../../../workbench';
import { goOnTo } from '../cables/cable-moves';
import { toFields } from './to-and-fro';
import { beginNew, join, makePlace, put } from './tray-additions';
import { TRAY_CANVAS } from './tray-canvas-part';
import { trayKey } from './tray-keys';
import { cancel, drop, grow, lookFromOther, nudge, remove, turnBoard, walk } from './tray-moves';

const KEYS =
  'Tab goes from place to place, arrows move the chosen one by a millimetre, Shift by ten, Alt makes it larger, letters add places, P draws a path from the chosen one, Enter puts down or goes on to the fields of the chosen one, Delete removes, M looks from the other side, Escape and then Tab leaves the map';

/** The map in the middle: the pointer and the keys draw the tray on it. */
export function TrayPane({ tray }: { readonly tray: Tray }) {
  const workbench = useWorkbench();
  const pane = useRef<HTMLDivElement>(null);
  // A new place waits for the keys, wherever it was asked for. A menu gives the focus back first.
  const waits = useSession(({ trayDraft }) => trayDraft?.kind === 'new' || trayDraft?.kind === 'path');
  useEffect(() => {
    if (!waits) return;
    const timer = setTimeout(() => pane.current?.focus(), 50);
    return () => clearTimeout(timer);
  }, [waits]);
  return (
    <KeyPane
      ref={pane}
      label={`Map of the tray. ${KEYS}.`}
      onKey={(press) => onKey(workbench, press)}
      onSettle={() => dropMoved(workbench)}
    >
      <Suspense fallback={null}>
        <Drawing tray={tray} />
      </Suspense>
    </KeyPane>
  );
}

/** Puts down what was moved; what is new waits for Enter, and a path for its other end. */
function dropMoved(workbench: Workbench): void {
  const { trayDraft } = workbench.session.getState();
  if (trayDraft?.kind === 'place' || trayDraft?.kind === 'board') drop(workbench);
}

function Drawing({ tray }: { readonly tray: Tray }) {
  const TrayCanvas = usePart(TRAY_CANVAS);
  const workbench = useWorkbench();
  const { session } = workbench;
  const build = useBuild();
  const side = useSession((state) => state.traySide);
  const tool = useSession((state) => state.trayTool);
  const draft = useSession((state) => state.trayDraft);
  const selection = useSession((state) => state.selection);
  const theme = useShownTheme(useSession((state) => state.settings.theme));
  const hidden = useSession((state) => state.hiddenCables);
  const cables = useMemo(() => {
    const laid = asLaid(build);
    if (laid === undefined) return null;
    return { laid, isShown: (lead: Lead) => !hidden.includes(cableFamilyOf(build, lead)) };
  }, [build, hidden]);
  const wayDraft = useSession((state) => state.wayDraft);
  const way = useMemo(() => wayShown(cables?.laid, wayDraft), [cables, wayDraft]);
  const listeners = useMemo(
    () => ({
      onChoose: (target: TrayTarget | null) => {
        if (!goOnTo(workbench, steppedOn(target))) session.getState().select(selectionOf(target));
      },
      onHover: (target: Target | null) => session.getState().hover(target),
      makePlace: (with_: TrayTool, from: Point, to: Point | null) => makePlace(workbench, with_, from, to),
      onDraft: (next: TrayDraft | null) => session.getState().draft(next),
      onDrop: () => drop(workbench),
      onPath: (from: string, to: string) => join(workbench, from, to),
    }),
    [session, workbench],
  );
  return (
    <TrayCanvas
      ref={workbench.canvas}
      build={build.id}
      tray={tray}
      board={build.board}
      side={side}
      cables={cables}
      way={way}
      tool={tool}
      draft={draft}
      selection={selection}
      label={mapWords(tray, side)}
      theme={theme}
      {...listeners}
    />
  );
}

/** The way that is being chosen, and where it can go on. */
function wayShown(laid: AsLaid | undefined, draft: WayDraft | null): WayShown | null {
  if (laid === undefined || draft === null) return null;
  const cable = laid.runs.find(({ id }) => id === runId(draft.plug))?.cable;
  const begun = cable && wayBegun(laid.laying, cable, draft.paths);
  return begun ? { paths: draft.paths, next: begun.next.map(({ path }) => path), at: begun.at } : null;
}

/** Where a press leads on to while a way is chosen place by place: over a cable along the path that it lies on. */
function steppedOn(target: TrayTarget | null): TrayPart | { readonly connector: string } | null {
  if (target?.kind === 'plug') return { kind: 'path', id: target.path };
  return target?.kind === 'on-tray' ? target.part : target;
}

function selectionOf(target: TrayTarget | null): Selection {
  if (target === null) return { kind: 'nothing' };
  return target.kind === 'plug' ? { kind: 'plug', plug: target.plug } : target;
}

function onKey(workbench: Workbench, press: KeyboardEvent): boolean {
  const key = trayKey(press);
  if (key === undefined || workbench.session.getState().dialogs.length > 0) return false;
  // From the back right is left on the sheet.
  const across = workbench.session.getState().traySide === 'front' ? 1 : -1;
  switch (key.kind) {
    case 'walk':
      // Past the last place Tab is an ordinary Tab.
      return walk(workbench, key.by);
    case 'nudge':
      nudge(workbench, key.x * across, key.y);
      break;
    case 'grow':
      grow(workbench, key.x, key.y);
      break;
    case 'tool':
      beginNew(workbench, key.tool);
      break;
    case 'other-side':
      lookFromOther(workbench);
      break;
    case 'turn':
      turnBoard(workbench);
      break;
    case 'put':
      // With nothing to put down, on to what is known of the chosen one.
      if (!put(workbench)) toFields();
      break;
    case 'remove':
      remove(workbench);
      break;
    case 'cancel':
      cancel(workbench);
  }
  return true;
}
