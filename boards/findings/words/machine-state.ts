import type { MachineState, SupplyState } from '../../circuit/machine-state';

const SUPPLY_WORDS: Readonly<Record<SupplyState, string>> = {
  unplugged: 'unplugged',
  standby: 'on standby',
  asleep: 'asleep',
  running: 'running',
};

/** "running, power held, drive busy". */
export function stateWords({ supply, held, drive, attached }: MachineState): string {
  return [
    SUPPLY_WORDS[supply],
    ...held.map((button) => `${button} held`),
    ...(drive === 'busy' ? ['drive busy'] : []),
    ...(attached ? ['sockets in use'] : []),
  ].join(', ');
}
