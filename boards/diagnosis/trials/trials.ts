import type { Build } from '../../document/build';
import { leadOf } from '../../document/lookup';
import type { CauseId } from '../faults/causes';
import { courseOf } from '../start-chain/course';
import { type Input, type Machine, type Pull, SOUND } from '../start-chain/machine';
import * as at from './causes-touched';
import type { ResultId, Trial } from './trial';

const START_AGAIN = ['gone', 'other', 'same'] as const;
const LOOK = ['found', 'not-found'] as const;

/** What a look finds if it is there, and what it takes for it if it is not. Common practice, no source. */
const FOUND = { ifThere: 0.85, ifNot: 0.03 } as const;

/** Whatever has one of these causes is sound while the change lasts. */
function withoutCauses(id: string, effort: number, causes: ReadonlySet<CauseId>): Trial {
  return {
    id,
    results: START_AGAIN,
    effort,
    powered: true,
    chances: (faults) => (faults.some(({ cause }) => causes.has(cause)) ? { gone: 1 } : { same: 1 }),
  };
}

function look(id: string, effort: number, causes: ReadonlySet<CauseId>): Trial {
  return {
    id,
    results: LOOK,
    effort,
    powered: false,
    chances: (faults) => {
      const found = faults.some(({ cause }) => causes.has(cause)) ? FOUND.ifThere : FOUND.ifNot;
      return { found, 'not-found': 1 - found };
    },
  };
}

/** How often plugs that are seated anew come to the right pins. Common practice, no source. */
const SEATED_RIGHT = 0.8;

function isSound({ rest, pressed }: Input): boolean {
  return rest === SOUND.power.rest && pressed === SOUND.power.pressed;
}

/** The buttons take their plugs along: each input gets what the other had. Answered by the start chain. */
const EXCHANGE: Trial = {
  id: 'exchange-buttons',
  results: START_AGAIN,
  effort: 3,
  powered: true,
  chances: (faults, { machine, end, manners }) => {
    const { power, reset } = machine;
    const sound = isSound(power) && isSound(reset);
    const has = (causes: ReadonlySet<CauseId>) => faults.some(({ cause }) => causes.has(cause));
    if (has(at.SEATED_ANEW) && !sound) return { gone: SEATED_RIGHT, same: 1 - SEATED_RIGHT };
    if (!has(at.AT_THE_BUTTONS)) return { same: 1 };
    const exchanged: Machine = { ...machine, power: reset, reset: power };
    const chances = { gone: 0, other: 0, same: 0 };
    const all = manners.reduce((sum, { share }) => sum + share, 0);
    for (const { share, manner } of manners) {
      const then = courseOf(exchanged, manner).end;
      chances[then === end ? 'same' : then === 'runs' ? 'gone' : 'other'] += share / all;
    }
    return chances;
  },
};

/** The standby rail at the large plug, from the machine itself. */
const STANDBY: Trial = {
  id: 'measure-standby',
  results: ['there', 'low', 'none'],
  effort: 5,
  powered: true,
  chances: (_, { machine: { mains, supply, standby } }) => {
    if (mains === 'off' || supply === 'dead') return { none: 1 };
    return standby === 'overloaded' ? { low: 1 } : { there: 1 };
  },
};

/** A button by continuity at its own plug, which is off the board: where the plug sat does not count. */
function measureButton(id: string, input: 'power' | 'reset'): Trial {
  return {
    id,
    results: ['closes-on-press', 'always-closed', 'never-closes', 'now-and-then'],
    effort: 4,
    powered: false,
    chances: (faults, { machine }) => {
      const inButton = faults.some(({ cause }) => at.AT_THE_BUTTONS.has(cause));
      const result = contactOf(inButton ? machine[input] : SOUND[input]);
      return { [result]: 1 };
    },
  };
}

function contactOf({ rest, pressed }: Input): ResultId {
  const is = (pull: Pull) => rest === pull || pressed === pull;
  if (is('now-and-then')) return 'now-and-then';
  if (rest === 'held') return 'always-closed';
  return pressed === 'held' ? 'closes-on-press' : 'never-closes';
}

const BARE_PINS = 'bare-pins';

/** What may be tried on any machine. */
const COMMON: readonly Trial[] = [
  look('look-rear-switch', 0.5, at.SEEN_AT_THE_REAR),
  look('look-front-plugs', 4, at.SEEN_AT_FRONT_PLUGS),
  look('look-supply-plugs', 3, at.SEEN_AT_SUPPLY_PLUGS),
  look('look-caps', 3, at.SEEN_AT_CAPS),
  look('look-under-board', 25, at.SEEN_UNDER_THE_BOARD),
  measureButton('measure-power-button', 'power'),
  measureButton('measure-reset-button', 'reset'),
  STANDBY,
  withoutCauses('mains-off-a-minute', 2, at.LATCHED),
  withoutCauses('other-outlet', 2, at.AT_THE_OUTLET),
  withoutCauses('usb-devices-off', 1, at.USB_OUTSIDE),
  withoutCauses(BARE_PINS, 5, at.AT_THE_FRONT),
  EXCHANGE,
  withoutCauses('settings-cleared', 4, at.IN_SETTINGS),
  withoutCauses('new-cell', 4, at.IN_THE_CELL),
  withoutCauses('one-memory-module', 6, at.IN_MEMORY),
  withoutCauses('other-supply', 25, at.IN_THE_SUPPLY),
  withoutCauses('out-of-case', 45, at.IN_THE_CASE),
];

/** One lead back on its header: what sits in it comes back with it. */
function leadBack(lead: string): Trial {
  return {
    id: `back:${lead}`,
    results: ['back', 'not-back'],
    effort: 2,
    powered: true,
    lead,
    after: { trial: BARE_PINS, result: 'gone' },
    chances: (faults) => (faults.some((fault) => fault.lead === lead) ? { back: 1 } : { 'not-back': 1 }),
  };
}

/** Everything that may be tried on a build; its leads go back one at a time. */
export function trialsOf(build: Build): readonly Trial[] {
  const seated = new Set(build.seats.map(({ lead }) => lead));
  return [...COMMON, ...[...seated].filter((lead) => leadOf(build, lead) !== undefined).map(leadBack)];
}
