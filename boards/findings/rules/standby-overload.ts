import { STANDBY_MOST_AMPS, STANDBY_OLD_AMPS, standbyLoad } from '../../circuit/readings/standby-load';
import { pinRefOf } from '../about';
import type { Rule } from '../rule';

/**
 * Sockets that are live while the machine is off all draw from one small standby supply.
 *
 * Good: four USB ports at the front, 2 A at most.
 * Bad: eight of them fed from standby: full, they would draw more than the rail gives.
 */
export const standbyOverload: Rule<'standby-overload'> = {
  id: 'standby-overload',
  source: 'ATX 3.0 power supply design guide (336521): +5 V standby, 3 A recommended',
  explains: [],
  check: ({ circuit, parts }) => {
    const legs = parts.flatMap((part) => part.legs.filter(({ signal }) => signal.nature === 'supply'));
    const load = standbyLoad(
      circuit,
      legs.map((leg) => ({
        ...pinRefOf(leg),
        signal: leg.id,
        port: `${leg.joint.lead.id} ${leg.joint.part?.id}`,
      })),
    );
    if (load.amps <= STANDBY_MOST_AMPS) return [];
    return [
      {
        code: 'standby-overload',
        severity: 'note',
        leads: [],
        pins: legs.map(pinRefOf),
        data: { ...load, mostAmps: STANDBY_MOST_AMPS, oldMostAmps: STANDBY_OLD_AMPS },
        remedies: [],
      },
    ];
  },
};
