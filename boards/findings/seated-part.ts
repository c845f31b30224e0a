import type { Pin } from '../document/connector';
import type { Lead, Part } from '../document/lead';
import type { Joint } from '../fit/joints';
import type { PartKind, Terminal } from '../signals/part-kind';
import { partKindOf } from '../signals/part-kinds';
import type { Job, Signal } from '../signals/signal';
import { type SignalId, signalOf } from '../signals/signals';

/** A wire end on a standing pin, with what that pin is. */
export interface OnPin {
  readonly joint: Joint;
  readonly pin: Pin;
  readonly id: SignalId;
  readonly signal: Signal;
}

/** One wire of a part on a standing pin. */
export interface Leg extends OnPin {
  readonly terminal: Terminal;
}

/** A part of a lead with at least one of its plugs on the board. */
export interface SeatedPart {
  readonly lead: Lead;
  readonly part: Part;
  readonly kind: PartKind;
  /** Its wires that meet a pin. Those over gaps and edges are told by the plug. */
  readonly legs: readonly Leg[];
}

/** The parts behind the given joints, in the order of their first joint. */
export function seatedPartsOf(joints: readonly Joint[]): readonly SeatedPart[] {
  const byPart = new Map<Part, { lead: Lead; legs: Leg[] }>();
  for (const joint of joints) {
    const { part, terminal, pin, lead } = joint;
    if (!part || !terminal) continue;
    const found = byPart.get(part) ?? { lead, legs: [] };
    byPart.set(part, found);
    if (pin) found.legs.push({ ...onPin(joint, pin), terminal });
  }
  return [...byPart].map(([part, { lead, legs }]) => ({ lead, part, kind: partKindOf(part.kind), legs }));
}

/** A joint on its pin. A pin whose meaning the sheet does not give is an unknown one. */
export function onPin(joint: Joint, pin: Pin): OnPin {
  const id = pin.signal ?? 'unknown';
  return { joint, pin, id, signal: signalOf(id) };
}

/**
 * Of a part that has two terminals, each wire of the first that meets a pin with each such wire of the second.
 * More than one pair where a terminal has wires to several plugs.
 */
export function pairsOf(part: SeatedPart): readonly (readonly [Leg, Leg])[] {
  const [first, second] = part.kind.terminals;
  if (!first || !second || part.kind.terminals.length !== 2) return [];
  const ones = part.legs.filter(({ terminal }) => terminal.id === first.id);
  const others = part.legs.filter(({ terminal }) => terminal.id === second.id);
  return ones.flatMap((one) => others.map((other) => [one, other] as const));
}

/** The job a pin is there for: by its signal, or for a ground by what the manual says. */
export function jobAt({ signal, pin }: OnPin): Job | undefined {
  return signal.job ?? pin.belongsTo;
}
