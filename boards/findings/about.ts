import type { NodeName } from '../circuit/device';
import { pinNode } from '../circuit/elements';
import type { Build, Seat } from '../document/build';
import type { PinRef, PlugRef } from '../document/lookup';
import { jointsOfPlug } from '../fit/joints';
import { seatedPlug } from '../fit/seated-plug';
import type { CheckedPlug } from './context';
import type { Meeting, PartOnPins, PlugOnConnector } from './finding-data';
import type { Leg, OnPin, SeatedPart } from './seated-part';

/** What a finding points at. */
export interface Pointer {
  readonly leads: readonly string[];
  readonly pins: readonly PinRef[];
}

/** The pin that a wire end lies on. */
export function pinRefOf({ joint, pin }: OnPin): PinRef {
  return { connector: joint.connector.id, pin: pin.pin };
}

/** The node of its pin in the circuit. */
export function nodeOf({ joint, pin }: OnPin): NodeName {
  return pinNode(joint.connector.id, pin.pin);
}

export function plugRefOf({ joint }: OnPin): PlugRef {
  return { lead: joint.lead.id, plug: joint.plug.id };
}

/** A wire on its pin, as data. */
export function meetingOf(on: OnPin): Meeting {
  const { terminal } = on.joint;
  return {
    plug: plugRefOf(on),
    hole: on.joint.hole,
    ...(terminal && { terminal: terminal.id }),
    pin: pinRefOf(on),
    signal: on.id,
  };
}

/** Points at a part's lead and at every pin its wires lie on. */
export function atPart({ lead, legs }: SeatedPart): Pointer {
  return { leads: [lead.id], pins: legs.map(pinRefOf) };
}

/** The part, and those of its wires that the finding is about. */
export function partOnPins({ part, legs }: SeatedPart, about: readonly Leg[] = legs): PartOnPins {
  return { part: part.id, meetings: about.map(meetingOf) };
}

/** Points at a plug's lead and at every pin under its contacts. */
export function atPlug({ lead, connector, joints }: CheckedPlug): Pointer {
  const labels = new Set(joints.flatMap(({ pin }) => (pin ? [pin.pin] : [])));
  return { leads: [lead.id], pins: [...labels].map((pin) => ({ connector: connector.id, pin })) };
}

/** Each pin once, in the order in which they are first named. */
export function uniquePins(pins: readonly PinRef[]): readonly PinRef[] {
  return [...new Map(pins.map((pin) => [`${pin.connector} ${pin.pin}`, pin])).values()];
}

export function plugOnConnector({ ref, connector }: CheckedPlug): PlugOnConnector {
  return { plug: ref, connector: connector.id };
}

/** The pins that a plug's wires would lie on in a seat. */
export function pinsUnderSeat(build: Build, seat: Seat): readonly PinRef[] {
  const labels = jointsOfPlug(seatedPlug(build, seat)).flatMap(({ pin }) => (pin ? [pin.pin] : []));
  return [...new Set(labels)].map((pin) => ({ connector: seat.connector, pin }));
}
