import { CaretsToAxisDashedVertical, Maximize, RotateCwSquare, ZoomIn, ZoomOut } from 'lucide-react';
import type { ReactNode } from 'react';
import { Toolbar } from 'react-aria-components/Toolbar';
import { useAction } from '../actions/actions';
import { shortcutWords } from '../actions/shortcut';
import { isMac } from '../actions/use-keys';
import { IconButton } from '../look/button';
import type { Area, DocumentPage } from '../store/session';
import type { Session } from '../store/session-store';
import { CAUTION_LINE } from '../words/caution-words';
import { pointedWords } from '../words/pointed-words';
import { NO_TRAY_HINT, TOOL_HINTS } from '../words/tray-words';
import { useBuild, useSession, useWorkbench } from '../workbench';

/** What the pointer is over, in words; how the board lies; the cautions, always. */
export function Strip() {
  const drawing = useSession(
    ({ area, page }) =>
      area === 'wire' || area === 'route' || area === 'diagnose' || (area === 'document' && page === 'plan'),
  );
  return (
    <footer className="strip">
      <div className="strip-words">
        <Pointed />
        <p className="soft small strip-caution">{CAUTION_LINE}</p>
      </div>
      {drawing && <ViewTools />}
    </footer>
  );
}

/** What there is to do, while there is nothing to say. */
const HINTS: Readonly<Record<Exclude<Area, 'route'>, string>> = {
  document: 'Choose a connector or a lead to see what is known of it.',
  wire: 'Drag a lead onto the board, or choose it and press Place.',
  diagnose: 'Answer what you see: Y and N on a question. F9 shows what to do next in large letters.',
  'hand-over': 'Choose a step, do it, tick it. F9 shows the steps in letters to be read from two metres.',
};

/** The same on the pages of Document. */
const PAGE_HINTS: Readonly<Record<DocumentPage, string>> = {
  plan: 'Drag a connector to its place, or choose it and use the arrow keys; R turns it.',
  connector: 'Choose pins and say what they are, or fill them by one of the ways above the grid.',
  lead: 'Compare every wire with the plug in your hand: its colour, and the hole it ends in.',
};

function hintFor({ area, page, selection, trayTool }: Session): string {
  if (area === 'route') return TOOL_HINTS[trayTool];
  if (area !== 'document') return HINTS[area];
  const shown = page === 'plan' || selection.kind === (page === 'lead' ? 'plug' : 'connector');
  return shown ? PAGE_HINTS[page] : HINTS.document;
}

function Pointed() {
  const build = useBuild();
  const message = useSession((session) => session.message);
  const hovered = useSession((session) => session.hovered);
  const machine = useSession((session) => session.machine);
  const hint = useSession(hintFor);
  const noTray = useSession(({ area }) => area === 'route') && build.case.tray === undefined;
  const words =
    (hovered && pointedWords(build, hovered, machine)) ?? message ?? (noTray ? NO_TRAY_HINT : hint);
  return <p className="strip-pointed">{words}</p>;
}

function ViewTools() {
  return (
    <Toolbar className="strip-tools" aria-label="View">
      <Tool id="view.zoom-out" icon={<ZoomOut size={20} aria-hidden="true" />} />
      <Tool id="view.zoom-in" icon={<ZoomIn size={20} aria-hidden="true" />} />
      <Tool id="view.fit" icon={<Maximize size={20} aria-hidden="true" />} />
      <Tool id="view.turn" icon={<RotateCwSquare size={20} aria-hidden="true" />} />
      <Tool id="view.mirror" icon={<CaretsToAxisDashedVertical size={20} aria-hidden="true" />} />
    </Toolbar>
  );
}

function Tool({ id, icon }: { readonly id: string; readonly icon: ReactNode }) {
  const { label, shortcuts, enabled, run } = useAction(id);
  const mac = isMac(useWorkbench());
  const [shortcut] = shortcuts;
  return (
    <IconButton
      label={label}
      keys={shortcut === undefined ? undefined : shortcutWords(shortcut, mac)}
      icon={icon}
      disabled={!enabled}
      onPress={() => run()}
    />
  );
}
