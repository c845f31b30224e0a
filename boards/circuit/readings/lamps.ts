import type { Volts } from '../../base/units';
import type { Build } from '../../document/build';
import type { Part } from '../../document/lead';
import { leadsOf } from '../../document/lookup';
import type { Circuit } from '../circuit';
import { type Span, spanOf, USUAL } from '../corner';
import { leadNode, partDeviceId } from '../elements';
import type { MachineState } from '../machine-state';
import { type Glow, type GlowSpan, glowAt, glowSpan } from './glow';
import { voltsBetween } from './volts-between';

/** An LED of a seated lead: what it shows in a state, and what is across it when it is dark. */
export interface Lamp {
  readonly lead: string;
  readonly part: string;
  readonly kind: Part['kind'];
  readonly glow: (state: MachineState) => GlowSpan;
  /** The other colour of a two-colour LED. */
  readonly otherGlow: ((state: MachineState) => GlowSpan) | undefined;
  /** What it shows at the usual values alone, in whichever of its colours is the brighter. */
  readonly usualLook: (state: MachineState) => Glow;
  /** Backwards across the LED, at most over the ranges; 0 when it is forward. */
  readonly reverseVolts: (state: MachineState) => Volts;
}

const LEGS: Partial<Record<Part['kind'], readonly [string, string]>> = {
  'power-led': ['anode', 'cathode'],
  'drive-led': ['anode', 'cathode'],
  'message-led': ['anode', 'cathode'],
  'two-colour-power-led': ['first', 'second'],
};

/** The LED that a part of a lead is; undefined where it is none or no plug of it is seated. */
export function lampOf(circuit: Circuit, lead: string, part: Part): Lamp | undefined {
  const element = partDeviceId(lead, part.id);
  const legs = LEGS[part.kind];
  if (!legs || !circuit.element(element)) return undefined;
  const through = (device: string, state: MachineState): Span =>
    spanOf((corner) => circuit.amps(element, device, state, corner));
  const otherDevice = part.kind === 'two-colour-power-led' ? `${element}.other` : undefined;
  const [plus, minus] = legs.map((leg) => leadNode(lead, `${part.id}.${leg}`));
  return {
    lead,
    part: part.id,
    kind: part.kind,
    glow: (state) => glowSpan(through(element, state)),
    otherGlow: otherDevice === undefined ? undefined : (state) => glowSpan(through(otherDevice, state)),
    usualLook: (state) => {
      const own = circuit.amps(element, element, state, USUAL);
      const others = otherDevice === undefined ? own : circuit.amps(element, otherDevice, state, USUAL);
      return glowAt(Math.max(own, others));
    },
    reverseVolts: (state) => Math.max(0, -(voltsBetween(circuit, plus, minus, state)?.low ?? 0)),
  };
}

/** What an LED shows in a state, in whichever of its colours is the brighter. */
export function brighterGlow(lamp: Lamp, state: MachineState): GlowSpan {
  const [one, other] = [lamp.glow(state), lamp.otherGlow?.(state)];
  return other && other.amps.usual > one.amps.usual ? other : one;
}

/** Every LED that some seated plug touches. */
export function lampsOf(build: Build, circuit: Circuit): readonly Lamp[] {
  return leadsOf(build).flatMap((lead) => lead.parts.flatMap((part) => lampOf(circuit, lead.id, part) ?? []));
}
