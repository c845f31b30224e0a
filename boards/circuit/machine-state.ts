/** A button of the case, by what it is for. */
export type Button = 'power' | 'reset';

export const SUPPLY_STATES = ['unplugged', 'standby', 'asleep', 'running'] as const;
export type SupplyState = (typeof SUPPLY_STATES)[number];

/** Everything outside the wiring that a level can depend on. */
export interface MachineState {
  readonly supply: SupplyState;
  readonly held: readonly Button[];
  readonly drive: 'idle' | 'busy';
  /** Something is plugged into every USB socket and audio jack. */
  readonly attached: boolean;
}

const HELD: readonly (readonly Button[])[] = [[], ['power'], ['reset'], ['power', 'reset']];

/** Every state there is: 4 supplies × 4 ways to hold buttons × drive idle or busy × sockets empty or used. */
export const ALL_STATES: readonly MachineState[] = SUPPLY_STATES.flatMap((supply) =>
  HELD.flatMap((held) =>
    (['idle', 'busy'] as const).flatMap((drive) =>
      [false, true].map((attached) => ({ supply, held, drive, attached })),
    ),
  ),
);

/** Plugged in and off, nothing touched: before the button is pressed. */
export const RESTING: MachineState = { supply: 'standby', held: [], drive: 'idle', attached: false };
export const RUNNING: MachineState = { ...RESTING, supply: 'running' };
export const BUSY: MachineState = { ...RUNNING, drive: 'busy' };
