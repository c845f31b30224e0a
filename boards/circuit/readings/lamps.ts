import type { Volts } from '../../base/units';
import type { Build } from '../../document/build';
import type { Part } from '../../document/lead';
import { leadsOf } from '../../document/lookup';
import type { Circuit } from '../circuit';
import { type Span, spanOf } from '../corner';
import { leadNode, partDeviceId } from '../elements';
import type { MachineState } from '../machine-state';
import { type GlowSpan, glowSpan } from './glow';

/** An LED of a seated lead: what it shows in a state, and what is across it when it is dark. */
export interface Lamp {
  readonly lead: string;
  readonly part: string;
  readonly kind: Part['kind'];
  readonly glow: (state: MachineState) => GlowSpan;
  /** The other colour of a two-colour LED. */
  readonly otherGlow: ((state: MachineState) => GlowSpan) | undefined;
  /** Backwards across the LED, at most over the ranges; 0 when it is forward. */
  readonly reverseVolts: (state: MachineState) => Volts;
}

const LEGS: Partial<Record<Part['kind'], readonly [string, string]>> = {
  'power-led': ['anode', 'cathode'],
  'drive-led': ['anode', 'cathode'],
  'message-led': ['anode', 'cathode'],
  'two-colour-power-led': ['first', 'second'],
};

/** Every LED that some seated plug touches. */
export function lampsOf(build: Build, circuit: Circuit): readonly Lamp[] {
  const present = new Set(circuit.elements.map(({ id }) => id));
  return leadsOf(build).flatMap((lead) =>
    lead.parts.flatMap((part): Lamp[] => {
      const element = partDeviceId(lead.id, part.id);
      const legs = LEGS[part.kind];
      if (!legs || !present.has(element)) return [];
      const through = (device: string, state: MachineState): Span =>
        spanOf((corner) => circuit.amps(element, device, state, corner));
      const across = (state: MachineState): Span =>
        spanOf((corner) => {
          const [plus, minus] = legs.map((leg) =>
            circuit.volts(leadNode(lead.id, `${part.id}.${leg}`), state, corner),
          );
          return plus === undefined || minus === undefined ? 0 : plus - minus;
        });
      return [
        {
          lead: lead.id,
          part: part.id,
          kind: part.kind,
          glow: (state) => glowSpan(through(element, state)),
          otherGlow:
            part.kind === 'two-colour-power-led'
              ? (state) => glowSpan(through(`${element}.other`, state))
              : undefined,
          reverseVolts: (state) => Math.max(0, -across(state).low),
        },
      ];
    }),
  );
}
