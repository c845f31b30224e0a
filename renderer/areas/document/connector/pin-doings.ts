import type { Turn } from '../../../../boards/base/units';
import type { Build } from '../../../../boards/document/build';
import type { Connector, Pin } from '../../../../boards/document/connector';
import { pinOf } from '../../../../boards/document/lookup';
import { orientationOf } from '../../../../boards/drawing/orientation';
import type { MirrorWay } from '../../../../boards/edit/commands/mirror-pins';
import { doCommand } from '../../../do-command';
import { counted } from '../../../words/list-words';
import type { Workbench } from '../../../workbench';
import { drawnSide } from './drawn-side';
import type { HeaderLayout } from './header-layout';
import { copiedText, laidOn, readCopied } from './pin-clipboard';
import { inOrder, type PinSelection } from './selection';

/** What is being worked on: a header, how it lies, what of it is chosen. */
export interface ChosenPins {
  readonly connector: Connector;
  readonly layout: HeaderLayout;
  readonly selection: PinSelection;
}

type Bench = Pick<Workbench, 'editor' | 'session'>;

/** Changes every chosen pin in the same way, in one step. */
export function changeChosen(
  workbench: Bench,
  { connector, layout, selection }: ChosenPins,
  change: (pin: Pin) => Pin,
) {
  const pins = inOrder(layout, selection).map((label) => change(pinOf(connector, label)));
  if (pins.length === 0) return;
  doCommand(workbench, { name: 'change-pins', args: { connector: connector.id, pins } });
}

/** What is known of the pin where the choice began goes to all others that are chosen. */
export function fillChosen(workbench: Bench, chosen: ChosenPins): void {
  const { connector, selection } = chosen;
  if (selection.chosen.size < 2) {
    workbench.session.getState().tell('Choose several pins first: the first of them fills the others.');
    return;
  }
  const from = pinOf(connector, selection.anchor);
  changeChosen(workbench, chosen, ({ pin }) => ({ ...from, pin }));
}

/** Nothing is known of the chosen pins any more. */
export function clearChosen(workbench: Bench, chosen: ChosenPins): void {
  changeChosen(workbench, chosen, ({ pin }) => ({ pin }));
}

/** The chosen pins as text; undefined where none is chosen. */
export function copyChosen(
  { session }: Bench,
  { connector, layout, selection }: ChosenPins,
): string | undefined {
  const labels = inOrder(layout, selection);
  if (labels.length === 0) return undefined;
  session.getState().tell(`${counted(labels.length, 'pin')} copied.`);
  return copiedText(connector, layout, labels);
}

/** Pins that were copied, laid on the header from the first chosen one on; or what is wrong with the text. */
export function pasteOn(workbench: Bench, { connector, layout, selection }: ChosenPins, text: string): void {
  const { tell } = workbench.session.getState();
  const copied = readCopied(text);
  if (!copied.ok) {
    tell(copied.problem);
    return;
  }
  const chosen = inOrder(layout, selection);
  const { pins, outside } = laidOn(layout, chosen.length > 0 ? chosen : [selection.focus], copied.value);
  if (pins.length === 0) {
    tell('None of the copied pins would lie on a position there. Choose another pin to begin at.');
    return;
  }
  const done = doCommand(workbench, {
    name: 'change-pins',
    args: { connector: connector.id, pins: [...pins] },
  });
  if (done && outside > 0)
    tell(
      `${counted(pins.length, 'pin')} pasted; ${counted(outside, 'pin')} had no position there and stayed out.`,
    );
}

/** Mirrors what is known of a header, sides as drawn. */
export function mirrorAll(
  workbench: Bench,
  { connector }: ChosenPins,
  view: Build['view'],
  drawn: MirrorWay,
): void {
  const way = unturned(drawn, connector.place.turn, view);
  doCommand(workbench, { name: 'mirror-pins', args: { connector: connector.id, way } });
}

function unturned(drawn: MirrorWay, turn: Turn, view: Build['view']): MirrorWay {
  if (drawn === 'half-turn') return drawn;
  const upright = ['top', 'bottom'].includes(drawnSide('top', turn, orientationOf(view)));
  if (upright) return drawn;
  return drawn === 'left-right' ? 'top-bottom' : 'left-right';
}
