import type { ObservationId } from '../observations/observations';
import type { ResultId, Trial } from './trial';

/** All prose about trials. */
export interface TrialWords {
  readonly title: string;
  readonly steps: readonly string[];
}

const MAINS_OFF = 'Switch the supply off at the rear, pull the mains plug and wait half a minute.';
const START = 'Put mains back and start once, hands off the board.';

const WORDS: Readonly<Record<string, TrialWords>> = {
  'look-rear-switch': {
    title: 'Look at the rear of the supply',
    steps: [
      'Is its switch on, and is its mains selector, if it has one, set for your mains? Change a selector only with the mains plug pulled.',
    ],
  },
  'look-front-plugs': {
    title: 'Compare every front plug and fan plug with the board’s manual',
    steps: [MAINS_OFF, 'Look at each plug in a good light: right header, right pair, right way round?'],
  },
  'look-supply-plugs': {
    title: 'Look at every plug of the supply',
    steps: [
      MAINS_OFF,
      'Is each one on, home to its latch, the right way round, and of this very supply? Force none.',
    ],
  },
  'look-caps': {
    title: 'Compare the jumper caps with the board’s manual',
    steps: [
      MAINS_OFF,
      'Look at each cap: is it there, and in the place that the manual names for normal use?',
    ],
  },
  'look-under-board': {
    title: 'Look for metal under and on the board',
    steps: [
      MAINS_OFF,
      'Take the board out and look for loose screws and for standoffs where the board has no hole.',
    ],
  },
  'measure-power-button': {
    title: 'Measure the power button at its plug',
    steps: [
      MAINS_OFF,
      'Take its plug off the board and measure continuity between its two holes, first untouched, then pressed.',
    ],
  },
  'measure-reset-button': {
    title: 'Measure the reset button at its plug',
    steps: [
      MAINS_OFF,
      'Take its plug off the board and measure continuity between its two holes, first untouched, then pressed.',
    ],
  },
  'measure-standby': {
    title: 'Measure the standby voltage at the large supply plug',
    steps: [
      'Leave the plug on the board, mains on, machine off. Black probe to the metal of the case.',
      'Touch the purple wire from behind with the red probe: 4.75 V to 5.25 V is there, less is low. Let the probe touch nothing else, and never open the supply.',
    ],
  },
  'mains-off-a-minute': {
    title: 'Take mains off for a minute',
    steps: ['Pull the mains plug, press the power button once, and wait a full minute.', START],
  },
  'other-outlet': {
    title: 'Use another outlet and another mains cable',
    steps: ['Pull the mains plug. Take a cable and an outlet that run something else.', START],
  },
  'usb-devices-off': {
    title: 'Unplug every USB device, the keyboard too',
    steps: ['Leave only the screen joined.', START],
  },
  'bare-pins': {
    title: 'Take all front leads off and touch the two power pins',
    steps: [
      MAINS_OFF,
      'Note or photograph where each lead sat, then take all front leads off the board.',
      'Find the two power switch pins in the board’s manual. Put mains back and touch only these two, for a moment, with the tip of a screwdriver. No other pins.',
    ],
  },
  'exchange-buttons': {
    title: 'Exchange the plugs of power and reset',
    steps: [
      MAINS_OFF,
      'Put the reset button’s plug on the power pins and the power button’s plug on the reset pins.',
      'Put mains back and start with the reset button.',
    ],
  },
  'settings-cleared': {
    title: 'Clear the settings of the board',
    steps: [MAINS_OFF, 'Note the settings you need, then clear them as the board’s manual says.', START],
  },
  'new-cell': {
    title: 'Put a new coin cell in',
    steps: [MAINS_OFF, 'Change the cell for a new one of the same type, the same side up.', START],
  },
  'one-memory-module': {
    title: 'Try one memory module alone',
    steps: [
      MAINS_OFF,
      'Leave one module in the slot that the manual names first, pressed home at both ends; try each module in turn.',
      START,
    ],
  },
  'other-supply': {
    title: 'Try another supply that is known to be good',
    steps: [
      MAINS_OFF,
      'Use the other supply with its own cables only: a cable of another supply can destroy what it feeds.',
      START,
    ],
  },
  'out-of-case': {
    title: 'Try the board out of the case',
    steps: [
      MAINS_OFF,
      'Lay the board on dry cardboard with processor, cooler, one memory module and supply, and no front leads.',
      'Put mains back and touch the two power switch pins for a moment.',
    ],
  },
};

/** What a trial is called and how it is made. Throws for a trial without words. */
export function trialWords({ id, lead }: Trial): TrialWords {
  if (lead !== undefined)
    return {
      title: `Put the lead “${lead}” back, and no other`,
      steps: [MAINS_OFF, 'Put it where the board’s manual says.', START],
    };
  const words = WORDS[id];
  if (words === undefined) throw new Error(`No words for the trial ${id}`);
  return words;
}

/** Each result, and what it says. */
const RESULT_WORDS: Readonly<Record<ResultId, string>> = {
  gone: 'The trouble is gone: what was changed had to do with it.',
  other: 'The trouble is another one now: it moved with what was changed.',
  same: 'The trouble is the same: it most likely sits elsewhere.',
  back: 'The trouble is back: it sits in this lead, its button or its place.',
  'not-back': 'It still starts: this lead and its place are most likely sound.',
  found: 'Something is not as it should be: put it right before the next start.',
  'not-found': 'All as it should be: a look can miss things, so this only makes it less likely.',
  there: 'The voltage is there: mains, cable and standby are sound.',
  low: 'The voltage is low: something draws it down, or the supply cannot hold it.',
  none: 'No voltage: mains, the rear switch, the cable or the supply.',
  'closes-on-press': 'Open untouched, closed when pressed: the button and its wires are sound.',
  'always-closed': 'Closed untouched: the button is stuck, or its wires touch.',
  'never-closes': 'Open when pressed: the button or a wire is broken.',
  'now-and-then': 'It changes: the button is worn or a wire is loose.',
};

export function resultWords(result: ResultId): string {
  return RESULT_WORDS[result];
}

/** What “it works now” proves and what not; said whenever a trouble went away. */
export const WORKS_NOW = {
  proves: 'It works now: with this change it started, this time.',
  provesNot:
    'It does not prove that the part you changed was bad: plugs were moved, and a loose contact or a tripped supply recovers by that too. Change it back: only if the trouble returns was that the cause.',
} as const;

/** For every observation of heat, smoke, sparks or shock: what must not be plugged in again. */
const NOT_AGAIN: Partial<Readonly<Record<ObservationId, string>>> = {
  'melted-plug': 'the melted plug, its cable and the socket it was in',
  tingle: 'this mains cable, outlet and supply',
  'breaker-trips': 'the supply and its mains cable',
  spark: 'the plug or part where the spark was',
  pop: 'the supply, and this board on another supply',
  smoke: 'the part that smoked, the cable that fed it, and the supply',
  flame: 'anything that was joined to the burnt place',
  smell: 'the part that smells, the cable that fed it, and the supply',
  'hot-part': 'the part or wire that got hot',
  'usb-hot': 'the front USB lead, and any device in its sockets',
  'usb-device-killed': 'the front USB lead, and any device in its sockets',
};

/** What to do instead of any trial. */
export function stopWords(stops: readonly ObservationId[]): readonly string[] {
  const again = [...new Set(stops.flatMap((id) => NOT_AGAIN[id] ?? []))];
  return [
    'Stop. Pull the mains plug, touching only the plug and no metal of the case. If it burns or smokes on, leave it, warn others and call the fire service.',
    'Leave it unplugged. Start nothing more to find out: every start may burn another part.',
    ...again.map((what) => `Do not plug in again: ${what}.`),
    'Let a qualified person look at it. Never open the supply.',
  ];
}
