import type { Amps, Volts } from '../base/units';
import type { Build } from '../document/build';
import type { PinRef } from '../document/lookup';
import { type Surroundings, surroundings } from './around';
import { type Corner, USUAL } from './corner';
import { type Device, GROUND, type NodeName } from './device';
import type { Element, Subject } from './elements';
import { type Holder, holderOf } from './holder';
import type { MachineState } from './machine-state';
import { type Piece, pieceOf } from './piece';

/** A node on the way; a pin where it is one. */
interface Point {
  readonly node: NodeName;
  /** Against ground. */
  readonly volts: Volts;
  readonly pin?: PinRef;
}

/** One piece of the way, and what flows through it in the direction told. */
export interface PathStep {
  readonly piece: Piece;
  readonly amps: Amps;
  readonly from: Point;
  readonly to: Point;
}

/** The way of the current through something, or what holds it while none flows. */
export type Path =
  | { readonly kind: 'flows'; readonly steps: readonly PathStep[] }
  /** No volts where it hangs in the air; no holder where nothing pulls at it. */
  | { readonly kind: 'still'; readonly volts: Volts | undefined; readonly holder: Holder | undefined };

/** Less than this is leakage, and is told as nothing. */
const LEAST_AMPS: Amps = 1e-6;

interface Flow {
  readonly element: Element;
  readonly device: Device;
  readonly from: NodeName;
  readonly to: NodeName;
  readonly amps: Amps;
}

/**
 * The way of the current through a pin, wire or part in a machine state: from the plane of ground
 * through a supply back to it, at every node with the largest current. Where currents part, the smaller
 * ones are not told, so a step may carry more than the next.
 */
export function pathOf(build: Build, subject: Subject, state: MachineState, corner: Corner = USUAL): Path {
  const around = surroundings(build, subject, state, corner);
  if (!around) return { kind: 'still', volts: undefined, holder: undefined };
  const flows = flowsIn(around, state, corner);
  const start = largest(flows.filter((flow) => isThrough(flow, around.element)));
  if (!start || start.amps < LEAST_AMPS) {
    const [node] = around.element.nodes;
    return {
      kind: 'still',
      volts: node === undefined || !isTied(around, node) ? undefined : around.solution.volts.get(node),
      holder: holderOf(build, around, state, corner),
    };
  }
  const pins = pinsByNode(around);
  const point = (node: NodeName): Point => {
    const pin = pins.get(node);
    return { node, volts: around.solution.volts.get(node) ?? 0, ...(pin && { pin }) };
  };
  const steps = [...walk(flows, start, 'up').reverse(), start, ...walk(flows, start, 'down')].map(
    ({ element, device, from, to, amps }): PathStep => ({
      piece: pieceOf(build, element, device, around.solution.tripped),
      amps,
      from: point(from),
      to: point(to),
    }),
  );
  return { kind: 'flows', steps };
}

function isTied({ solution }: Surroundings, node: NodeName): boolean {
  return !solution.floating.has(node);
}

/** Every device with a current, its ends in the direction of it. */
function flowsIn({ elements, solution }: Surroundings, state: MachineState, corner: Corner): readonly Flow[] {
  return elements.flatMap((element) =>
    element.devices(state, corner).flatMap((device): readonly Flow[] => {
      const amps = solution.amps.get(device.id) ?? 0;
      if (amps === 0) return [];
      const [from, to] = amps > 0 ? [device.a, device.b] : [device.b, device.a];
      return [{ element, device, from, to, amps: Math.abs(amps) }];
    }),
  );
}

/** A pin lets through whatever meets at it; a wire or a part what is its own. */
function isThrough(flow: Flow, { id, subject, nodes: [node] }: Element): boolean {
  if (subject.kind !== 'pin') return flow.element.id === id;
  return flow.from === node || flow.to === node;
}

function largest(flows: readonly Flow[]): Flow | undefined {
  let most: Flow | undefined;
  for (const flow of flows) if (!most || flow.amps > most.amps) most = flow;
  return most;
}

/** The flows before or after one, nearest first, as far as ground. */
function walk(flows: readonly Flow[], start: Flow, way: 'up' | 'down'): Flow[] {
  const walked: Flow[] = [];
  const seen = new Set([start]);
  for (let last = start; ; ) {
    const node = way === 'up' ? last.from : last.to;
    if (node === GROUND) return walked;
    const next = largest(
      flows.filter((flow) => !seen.has(flow) && (way === 'up' ? flow.to : flow.from) === node),
    );
    if (!next) return walked;
    seen.add(next);
    walked.push(next);
    last = next;
  }
}

function pinsByNode({ elements }: Surroundings): ReadonlyMap<NodeName, PinRef> {
  return new Map(
    elements.flatMap(({ id, subject }) => (subject.kind === 'pin' ? [[id, subject.pin] as const] : [])),
  );
}
