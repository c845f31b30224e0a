import type { Ohms, Volts } from '../../base/units';
import type { ParameterId } from '../../signals/parameters';
import { type PullCondition, RAILS, type RailId, type Stub, type StubElement } from '../../signals/stub';
import { BOARDS, evenShares, valueBelow } from './spread';

/** States in which a pin is measured. "busy" is running with the drive at work. */
export type MeasuredIn = 'unplugged' | 'standby' | 'running' | 'busy';

/** What a pin is to a meter: a source behind a resistance; nothing is joined to it where `ohms` is infinite. */
export interface Behind {
  readonly volts: Volts;
  readonly ohms: Ohms;
}

const RANK: Readonly<Record<MeasuredIn | 'always', number>> = {
  always: 0,
  unplugged: 0,
  standby: 1,
  running: 2,
  busy: 2,
};

const railOf = (id: RailId) => {
  const row = RAILS.find((rail) => rail.id === id);
  if (row === undefined) throw new Error(`No rail ${id}`);
  return row;
};

function pullsNow(when: PullCondition, state: MeasuredIn): boolean {
  return (when === 'running' && RANK[state] === 2) || (when === 'drive-busy' && state === 'busy');
}

/** One branch of a stub in a state, as the parameters of a source and of the resistances in series with it. */
interface Branch {
  readonly volts?: ParameterId;
  readonly ohms: readonly ParameterId[];
}

function branchOf(element: StubElement, state: MeasuredIn): Branch | undefined {
  switch (element.kind) {
    case 'ground':
      return { ohms: [element.ohms] };
    case 'pulls-low':
      return pullsNow(element.when, state) ? { ohms: [element.ohms] } : undefined;
    case 'rail':
    case 'fused-rail': {
      if (element.kind === 'rail' && element.when !== undefined) return undefined;
      const ohms = element.kind === 'rail' ? element.ohms : element.coldOhms;
      const { volts, live } = railOf(element.rail);
      return RANK[state] >= RANK[live]
        ? { volts, ohms: [ohms, 'rail-ohms'] }
        : { ohms: [ohms, 'rail-off-ohms'] };
    }
  }
}

/** Whether an element of a stub can be seen by any reading: asleep and with full sockets nobody measures. */
export function isSeen(element: StubElement): boolean {
  if (element.kind === 'rail') return element.when === undefined;
  return element.kind !== 'pulls-low' || element.when === 'running' || element.when === 'drive-busy';
}

/** What lies behind a pin, on each of the imagined boards, in one state. */
export function behindPin(stub: Stub, state: MeasuredIn): readonly Behind[] {
  const branches = stub.map((element) => branchOf(element, state)).filter((branch) => branch !== undefined);
  const parameters = [...new Set(branches.flatMap(({ volts, ohms }) => (volts ? [volts, ...ohms] : ohms)))];
  if (branches.length === 0)
    return Array.from({ length: BOARDS }, () => ({ volts: 0, ohms: Number.POSITIVE_INFINITY }));
  return evenShares(parameters.length).map((shares) => {
    const value = (id: ParameterId) => valueBelow(id, shares[parameters.indexOf(id)] ?? 0.5);
    let siemens = 0;
    let amps = 0;
    for (const { volts, ohms } of branches) {
      const each = 1 / ohms.reduce((sum, id) => sum + value(id), 0);
      siemens += each;
      if (volts !== undefined) amps += each * value(volts);
    }
    return { volts: amps / siemens, ohms: 1 / siemens };
  });
}
