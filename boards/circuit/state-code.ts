import type { Factor } from './elements';
import { ALL_STATES, type MachineState, SUPPLY_STATES } from './machine-state';

/** A state as a number: a bit for each factor, and the supply above them. */
const BIT: Readonly<Record<Factor, number>> = { attached: 1, drive: 2, reset: 4, power: 8 };
const SUPPLY_STEP = 16;
const SUPPLY_MASK = SUPPLY_STEP * 3;

function codeOf({ supply, held, drive, attached }: MachineState): number {
  return (
    SUPPLY_STATES.indexOf(supply) * SUPPLY_STEP +
    (held.includes('power') ? BIT.power : 0) +
    (held.includes('reset') ? BIT.reset : 0) +
    (drive === 'busy' ? BIT.drive : 0) +
    (attached ? BIT.attached : 0)
  );
}

const BY_CODE: ReadonlyMap<number, MachineState> = new Map(ALL_STATES.map((state) => [codeOf(state), state]));

/** What something that feels only some factors makes of the states. Everything feels the supply. */
export interface Felt {
  /** The state that stands for all those it takes for the same. */
  readonly as: (state: MachineState) => MachineState;
  /** One state for each that it can tell apart. */
  readonly states: readonly MachineState[];
}

export function feltThrough(factors: ReadonlySet<Factor>): Felt {
  const mask = [...factors].reduce((bits, factor) => bits | BIT[factor], SUPPLY_MASK);
  return {
    as: (state) => BY_CODE.get(codeOf(state) & mask) ?? state,
    states: ALL_STATES.filter((state) => (codeOf(state) & ~mask) === 0),
  };
}
