import type { ParameterId } from '../signals/parameters';
import { type PullCondition, RAILS, type RailId, type StubElement } from '../signals/stub';
import { type Device, GROUND, type NodeName } from './device';
import type { MachineState, SupplyState } from './machine-state';

const RANK: Readonly<Record<SupplyState | 'always', number>> = {
  always: 0,
  unplugged: 0,
  standby: 1,
  asleep: 1,
  running: 2,
};

/** The value of a parameter: a pinned one where the sheet states it, else that of the corner. */
export type ValueIn = (id: ParameterId) => number;

/** A rail is stiff: what one lead takes does not move it, so every pin sees a source of its own. */
function railDevice(id: string, rail: RailId, node: NodeName, state: MachineState, valueIn: ValueIn): Device {
  const row = RAILS.find((one) => one.id === rail);
  if (!row) throw new Error(`No rail ${rail}`);
  const base = { id, a: node, b: GROUND };
  return RANK[state.supply] >= RANK[row.live]
    ? { ...base, kind: 'voltage', volts: valueIn(row.volts), ohms: valueIn('rail-ohms') }
    : { ...base, kind: 'resistor', ohms: valueIn('rail-off-ohms') };
}

function pullsNow(when: PullCondition, state: MachineState): boolean {
  if (when === 'sockets-used') return state.attached;
  if (when === 'asleep') return state.supply === 'asleep';
  if (state.supply !== 'running') return false;
  return when === 'running' || (when === 'drive-busy' && state.drive === 'busy');
}

/** The device of the rail behind a stub element; its plus node has the same name. */
export function railDeviceId(id: string): string {
  return `${id}.rail`;
}

/** What one element of a pin's stub is to the circuit. */
export function pinDevices(
  element: StubElement,
  id: string,
  node: NodeName,
  state: MachineState,
  valueIn: ValueIn,
): readonly Device[] {
  switch (element.kind) {
    case 'rail': {
      if (element.when !== undefined && element.when !== state.supply) return [];
      const inner = railDeviceId(id);
      return [
        railDevice(inner, element.rail, inner, state, valueIn),
        { id, kind: 'resistor', a: inner, b: node, ohms: valueIn(element.ohms) },
      ];
    }
    case 'fused-rail': {
      const inner = railDeviceId(id);
      return [
        railDevice(inner, element.rail, inner, state, valueIn),
        {
          id,
          kind: 'fuse',
          a: inner,
          b: node,
          coldOhms: valueIn(element.coldOhms),
          tripAmps: valueIn(element.tripAmps),
          trippedOhms: valueIn(element.trippedOhms),
        },
      ];
    }
    case 'ground':
      return [{ id, kind: 'resistor', a: node, b: GROUND, ohms: valueIn(element.ohms) }];
    case 'pulls-low':
      return [
        {
          id,
          kind: 'open-drain',
          a: node,
          b: GROUND,
          on: pullsNow(element.when, state),
          onOhms: valueIn(element.ohms),
        },
      ];
  }
}
