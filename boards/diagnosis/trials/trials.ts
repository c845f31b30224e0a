import { byIdentity } from '../../base/by-identity';
import type { Build } from '../../document/build';
import { leadOf } from '../../document/lookup';
import { findingsOf } from '../../findings/findings';
import { machineOf } from '../faults/faults';
import type { ObservationId } from '../observations/observations';
import { type Input, type Machine, type Pull, SOUND } from '../start-chain/machine';
import * as at from './causes-touched';
import { LOOK_TRIALS } from './looks';
import type { Chances, ResultId, Trial } from './trial';
import { AT_FRONT_USB_SOCKETS, AT_THE_LEADS, afterChange, compared, showsWithout } from './what-comes';

const START_AGAIN = ['gone', 'other', 'same'] as const;

/** Whatever the change touches is sound while it lasts. */
function change(id: string, effort: number, touched: at.Touched): Trial {
  return {
    id,
    results: START_AGAIN,
    tellsNothing: 'same',
    effort,
    powered: true,
    chances: (faults, outcome) => afterChange(faults, outcome, touched),
  };
}

/** A start with leads off: a trouble that only shows at those leads cannot be looked for meanwhile. */
function startWithoutLeads(
  id: string,
  effort: number,
  touched: at.Touched,
  hidden: ReadonlySet<ObservationId> = AT_THE_LEADS,
): Trial {
  return {
    ...change(id, effort, touched),
    chances: (faults, outcome) =>
      showsWithout(hidden, outcome) ? afterChange(faults, outcome, touched) : { same: 1 },
  };
}

function isSound({ rest, pressed }: Input): boolean {
  return rest === SOUND.power.rest && pressed === SOUND.power.pressed;
}

/** The buttons take their plugs along: each input gets what the other had. Answered by the start chain. */
const EXCHANGE: Trial = {
  id: 'exchange-buttons',
  results: START_AGAIN,
  tellsNothing: 'same',
  effort: 6,
  powered: true,
  chances: (faults, outcome) => {
    const { power, reset } = outcome.machine;
    const anew = Math.max(...faults.map((fault) => at.shareIn(at.SEATED_ANEW, fault)));
    if (anew > 0 && !(isSound(power) && isSound(reset))) return { gone: anew, same: 1 - anew };
    if (!faults.some((fault) => at.shareIn(at.AT_THE_BUTTONS, fault) > 0)) return { same: 1 };
    const exchanged: Machine = { ...outcome.machine, power: reset, reset: power };
    return compared(exchanged, outcome);
  },
};

/** The standby rail at the large plug, from the machine itself. */
const STANDBY: Trial = {
  id: 'measure-standby',
  results: ['there', 'low', 'none'],
  tellsNothing: 'there',
  effort: 9,
  powered: true,
  chances: (_, { machine: { mains, supply, standby } }) => {
    if (mains === 'off' || supply === 'dead') return { none: 1 };
    return standby === 'overloaded' ? { low: 1 } : { there: 1 };
  },
};

/** Mains off releases a protection that has tripped; where the reason is still there it trips anew at the next start. */
const MAINS_OFF: Trial = {
  id: 'mains-off-a-minute',
  results: START_AGAIN,
  tellsNothing: 'same',
  effort: 3,
  powered: true,
  chances: (faults, outcome): Chances => {
    if (outcome.machine.supply !== 'latched') return { same: 1 };
    const alone = faults.every(({ cause }) => cause === 'psu-latched');
    return alone
      ? { gone: 0.9, same: 0.1 }
      : compared({ ...outcome.machine, rails: 'shorted', supply: 'sound' }, outcome);
  },
};

/** The supply by itself, asked to start by its own plug: it runs where nothing but its load keeps it off. */
const SUPPLY_ALONE: Trial = {
  id: 'supply-alone',
  results: ['starts', 'stays-off'],
  tellsNothing: 'starts',
  effort: 9,
  powered: true,
  chances: (faults, { machine: { mains, supply } }) => {
    if (mains === 'off' || supply === 'dead') return { 'stays-off': 1 };
    // Mains was off for it, and that alone releases a protection that has tripped.
    const pinched = faults.some(({ cause }) => cause === 'cable-short');
    return pinched ? { 'stays-off': 0.7, starts: 0.3 } : { starts: 1 };
  },
};

/** A button by continuity at its own plug, which is off the board: where the plug sat does not count. */
function measureButton(id: string, input: 'power' | 'reset'): Trial {
  return {
    id,
    results: ['closes-on-press', 'always-closed', 'never-closes', 'now-and-then'],
    tellsNothing: 'closes-on-press',
    effort: 6,
    powered: false,
    chances: (faults, { machine }) => {
      const inButton = faults.some((fault) => at.shareIn(at.AT_THE_BUTTONS, fault) > 0);
      return { [contactOf(inButton ? machine[input] : SOUND[input])]: 1 };
    },
  };
}

function contactOf({ rest, pressed }: Input): ResultId {
  const is = (pull: Pull) => rest === pull || pressed === pull;
  if (is('now-and-then')) return 'now-and-then';
  if (rest === 'held') return 'always-closed';
  return pressed === 'held' ? 'closes-on-press' : 'never-closes';
}

/** The coin cell by its voltage. One that is flat reads low; others read low now and then. */
const MEASURE_CELL: Trial = {
  id: 'measure-cell',
  results: ['there', 'low'],
  tellsNothing: 'there',
  effort: 4,
  powered: false,
  chances: (faults) => {
    const low = faults.some(({ cause }) => cause === 'coin-cell') ? 0.95 : 0.04;
    return { low, there: 1 - low };
  },
};

/** Another fan on the header, and this fan on another header: the trouble goes along with what has it. */
const EXCHANGE_FANS: Trial = {
  id: 'exchange-fans',
  results: START_AGAIN,
  tellsNothing: 'same',
  effort: 6,
  powered: true,
  chances: (faults): Chances => {
    if (faults.some(({ cause }) => cause === 'fan-fault' || cause === 'fan-wiring')) return { other: 1 };
    const elsewhere = faults.some((fault) => at.shareIn(at.ON_THE_WATCHED_HEADER, fault) > 0.9);
    return elsewhere ? { gone: 0.8, same: 0.2 } : { same: 1 };
  },
};

const BARE_PINS = 'bare-pins';

/** What may be tried on any machine. */
const COMMON: readonly Trial[] = [
  ...LOOK_TRIALS,
  measureButton('measure-power-button', 'power'),
  measureButton('measure-reset-button', 'reset'),
  MEASURE_CELL,
  STANDBY,
  SUPPLY_ALONE,
  MAINS_OFF,
  change('other-outlet', 4, at.AT_THE_OUTLET),
  change('usb-devices-off', 3, at.USB_OUTSIDE),
  startWithoutLeads('front-usb-off', 5, at.AT_FRONT_USB, AT_FRONT_USB_SOCKETS),
  startWithoutLeads(BARE_PINS, 10, at.AT_THE_FRONT),
  EXCHANGE,
  change('switch-turned', 4, at.SWITCH_TURNED_ROUND),
  change('light-turned', 4, at.TURNED_ROUND),
  change('board-between-out', 5, at.BETWEEN_THE_LEADS),
  change('usb-on-main-rail', 4, at.ON_THE_MAIN_RAIL),
  change('fan-on-watched-header', 5, at.ON_THE_WATCHED_HEADER),
  EXCHANGE_FANS,
  change('other-fan', 6, at.WITH_ANOTHER_FAN),
  change('audio-lead-moved', 5, at.AUDIO_LEAD_MOVED),
  change('audio-kind-set', 6, at.AUDIO_KIND_SET),
  change('settings-cleared', 6, at.IN_SETTINGS),
  change('new-cell', 6, at.IN_THE_CELL),
  change('one-memory-module', 9, at.IN_MEMORY),
  change('other-memory', 10, at.WITH_OTHER_MEMORY),
  change('card-out', 9, at.IN_A_CARD),
  change('drives-off', 6, at.AT_THE_DRIVES),
  change('other-data-port', 5, at.ON_ANOTHER_PORT),
  change('other-data-cable', 6, at.WITH_ANOTHER_DATA_CABLE),
  change('other-system', 12, at.WITH_ANOTHER_SYSTEM),
  change('cooler-anew', 20, at.COOLER_SEATED_ANEW),
  change('other-supply', 40, at.IN_THE_SUPPLY),
  startWithoutLeads('fewest-parts', 30, at.WITH_THE_FEWEST),
  startWithoutLeads('out-of-case', 60, at.IN_THE_CASE),
  change('other-board', 90, at.ON_ANOTHER_BOARD),
];

/** One lead back on its header: what sits in it comes back with it. */
function leadBack(lead: string): Trial {
  return {
    id: `back:${lead}`,
    results: ['back', 'not-back'],
    tellsNothing: 'not-back',
    effort: 4,
    powered: true,
    lead,
    after: { trial: BARE_PINS, results: ['gone'] },
    chances: (faults) => {
      // Put where the manual says, a plug that was elsewhere or off has been put right on the way.
      const stays = faults.map((fault) => (fault.lead === lead ? 1 - at.shareIn(at.SEATED_ANEW, fault) : 0));
      const back = 1 - stays.reduce((none, stay) => none * (1 - stay), 1);
      return { back, 'not-back': 1 - back };
    },
  };
}

/** The same on a wiring of which the checks say that mains must not be connected to it. */
const COMMON_IN_DANGER: readonly Trial[] = COMMON.map(inDanger);

function inDanger(trial: Trial): Trial {
  return trial.powered ? { ...trial, danger: true } : trial;
}

/** Everything that may be tried on a build; its leads go back one at a time. The same trials for the same machine. */
export const trialsOf = byIdentity((build: Build): readonly Trial[] => {
  const seated = new Set(build.seats.map(({ lead }) => lead));
  const back = [...seated].filter((lead) => leadOf(build, lead) !== undefined).map(leadBack);
  const danger = findingsOf(build).some(({ severity }) => severity === 'danger');
  return danger ? [...COMMON_IN_DANGER, ...back.map(inDanger)] : [...COMMON, ...back];
}, machineOf);
