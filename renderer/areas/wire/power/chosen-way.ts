import { analyse } from '../../../../boards/analyse';
import { byIdentity } from '../../../../boards/base/by-identity';
import type { MachineState } from '../../../../boards/circuit/machine-state';
import { type Path, pathOf } from '../../../../boards/circuit/path';
import type { Build } from '../../../../boards/document/build';
import { splitEnd } from '../../../../boards/document/lead';
import { leadOf, type PinRef, type PlugRef, samePlug } from '../../../../boards/document/lookup';
import { connectorName, leadName } from '../../../../boards/document/names';
import { findingId } from '../../../../boards/findings/finding';
import { wordsOf } from '../../../../boards/findings/words';
import { explainWords } from '../../../../boards/findings/words/explain';
import { type PathWords, pathWords } from '../../../../boards/findings/words/path';
import { jointsOf } from '../../../../boards/fit/joints';
import type { Contact, Live } from '../../../canvas/canvas-props';
import type { Selection, WireRef } from '../../../store/session';
import { colourWords } from '../../../words/plug-words';

/** A way of the current, told; of a finding also the states of the machine in which it goes this way. */
export interface ToldWay extends PathWords {
  readonly when?: string;
  readonly path: Path;
}

/** Where the current goes through what is chosen. */
export interface ChosenWay {
  readonly name: string;
  /** None where no pin has a part in what is chosen. */
  readonly ways: readonly ToldWay[];
}

interface Asked {
  readonly build: Build;
  readonly selection: Selection;
  readonly state: MachineState;
}

/**
 * Of a pin or wire its own way, of a seated plug that of its largest current, in a state of the machine;
 * of a finding its ways in every state. Null where nothing of these is chosen.
 */
export const chosenWay = byIdentity(
  ({ build, selection, state }: Asked): ChosenWay | null => {
    const told = (path: Path): readonly ToldWay[] => [{ path, ...pathWords(build, path) }];
    const ofPin = (pin: PinRef) => pathOf(build, { kind: 'pin', pin }, state);
    switch (selection.kind) {
      case 'nothing':
      case 'on-tray':
        return null;
      case 'connector': {
        const { connector, pin } = selection;
        if (pin === undefined) return null;
        const name = `Pin\u00a0${pin} of ${connectorName(build, connector)}`;
        return { name, ways: told(ofPin({ connector, pin })) };
      }
      case 'plug': {
        const paths = pinsUnder(build, selection.plug).map(ofPin);
        const path = largest(paths);
        return path ? { name: leadName(build, selection.plug.lead), ways: told(path) } : null;
      }
      case 'wire':
        return wireWay(build, selection, told, state);
      case 'finding': {
        const finding = analyse(build).findings.find((one) => findingId(one) === selection.id);
        if (!finding) return null;
        const flowing = explainWords(build, finding);
        const held = flowing.length > 0 ? undefined : largest(finding.pins.map(ofPin));
        return {
          name: wordsOf(finding, build).title.replace(/\.$/, ''),
          ways: held ? told(held) : flowing,
        };
      }
    }
  },
  ({ build, selection, state }) => [build, selection, state],
);

function wireWay(
  build: Build,
  { plug, wire: index }: WireRef,
  told: (path: Path) => readonly ToldWay[],
  state: MachineState,
): ChosenWay | null {
  const wire = leadOf(build, plug.lead)?.wires[index];
  if (!wire || pinsUnder(build, plug).length === 0) return null;
  return {
    name: `The ${colourWords(wire)} wire of ${leadName(build, plug.lead)}`,
    ways: told(pathOf(build, { kind: 'wire', lead: plug.lead, wire: index }, state)),
  };
}

function pinsUnder(build: Build, plug: PlugRef): readonly PinRef[] {
  return jointsOf(build).flatMap((joint) =>
    joint.pin && samePlug({ lead: joint.lead.id, plug: joint.plug.id }, plug)
      ? [{ connector: joint.connector.id, pin: joint.pin.pin }]
      : [],
  );
}

function largest(paths: readonly Path[]): Path | undefined {
  const most = Math.max(...paths.map(rank));
  return paths.find((path) => rank(path) === most);
}

/** More current says more; without any, a level that a rail holds says more than ground. */
function rank(path: Path): number {
  if (path.kind === 'flows') return 1 + Math.max(...path.steps.map(({ amps }) => amps));
  return path.holder && 'rail' in path.holder.stub ? 1 : 0;
}

/** What of the ways can be marked on the drawing: contacts of wires, and pins. */
export function liveOf(build: Build, way: ChosenWay | null): Live | null {
  const steps = (way?.ways ?? []).flatMap(({ path }) => (path.kind === 'flows' ? path.steps : []));
  if (steps.length === 0) return null;
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
