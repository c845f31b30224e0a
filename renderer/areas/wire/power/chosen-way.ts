import type { MachineState } from '../../../../boards/circuit/machine-state';
import { type Path, pathOf } from '../../../../boards/circuit/path';
import type { Build } from '../../../../boards/document/build';
import { splitEnd } from '../../../../boards/document/lead';
import { leadOf, type PinRef, type PlugRef, samePlug } from '../../../../boards/document/lookup';
import { connectorName, leadName } from '../../../../boards/document/names';
import { jointsOf } from '../../../../boards/fit/joints';
import type { Contact, Live } from '../../../canvas/canvas-props';
import type { Selection } from '../../../store/session';

/** The way of the current through what is chosen, in a state of the machine. */
export interface ChosenWay {
  readonly name: string;
  readonly path: Path;
}

/** Of a pin its own way, of a seated plug that of its largest current; null where neither is chosen. */
export function chosenWay(build: Build, selection: Selection, state: MachineState): ChosenWay | null {
  if (selection.kind === 'connector' && selection.pin !== undefined) {
    const { connector, pin } = selection;
    return {
      name: `Pin\u00a0${pin} of ${connectorName(build, connector)}`,
      path: pathOf(build, { kind: 'pin', pin: { connector, pin } }, state),
    };
  }
  if (selection.kind !== 'plug') return null;
  const paths = pinsUnder(build, selection.plug).map((pin) => pathOf(build, { kind: 'pin', pin }, state));
  const most = Math.max(...paths.map(rank));
  const path = paths.find((one) => rank(one) === most);
  return path ? { name: leadName(build, selection.plug.lead), path } : null;
}

function pinsUnder(build: Build, plug: PlugRef): readonly PinRef[] {
  return jointsOf(build).flatMap((joint) =>
    joint.pin && samePlug({ lead: joint.lead.id, plug: joint.plug.id }, plug)
      ? [{ connector: joint.connector.id, pin: joint.pin.pin }]
      : [],
  );
}

/** More current says more; without any, a level that a rail holds says more than ground. */
function rank(path: Path): number {
  if (path.kind === 'flows') return 1 + Math.max(...path.steps.map(({ amps }) => amps));
  return path.holder && 'rail' in path.holder.stub ? 1 : 0;
}

/** What of a way can be marked on the drawing: contacts of wires, and pins. */
export function liveOf(build: Build, way: ChosenWay | null): Live | null {
  if (way?.path.kind !== 'flows') return null;
  const { steps } = way.path;
  return {
    pins: steps.flatMap(({ to }) => (to.pin ? [to.pin] : [])),
    contacts: steps.flatMap(({ piece }) =>
      piece.kind === 'wire' ? contactsOf(build, piece.lead, piece.wire) : [],
    ),
  };
}

function contactsOf(build: Build, id: string, index: number): readonly Contact[] {
  const lead = leadOf(build, id);
  const wire = lead?.wires[index];
  if (!lead || !wire) return [];
  return [wire.from, wire.to]
    .map(splitEnd)
    .flatMap(({ owner, point }) =>
      lead.plugs.some((plug) => plug.id === owner) ? [{ plug: { lead: id, plug: owner }, hole: point }] : [],
    );
}
