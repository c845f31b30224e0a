import type { Risk, Stop } from './held-back';
import type { ResultId, Trial } from './trial';
import { CHANGE_WORDS } from './words/changes';
import { LOOK_WORDS } from './words/looks';
import { MAINS_OFF, START, type TrialWords, type WordsById } from './words/phrases';

const WORDS: WordsById = { ...LOOK_WORDS, ...CHANGE_WORDS };

/** What a trial is called and how it is made. Throws for a trial without words. */
export function trialWords({ id, lead, after }: Trial): TrialWords {
  if (lead !== undefined)
    return {
      title: 'Put one lead back, and no other lead',
      steps: [MAINS_OFF, 'Put it where the board’s manual says.', START],
    };
  if (id.startsWith('right:') && after !== undefined)
    return {
      title: 'Put right what you found, and start again',
      steps: [MAINS_OFF, 'Put right all that you found, and change nothing else meanwhile.', START],
    };
  const words = WORDS[id];
  if (words === undefined) throw new Error(`No words for the trial ${id}`);
  return words;
}

/** Each result, and what it says in general. */
const RESULT_WORDS: Readonly<Record<ResultId, string>> = {
  gone: 'The trouble is gone: what was changed had to do with it.',
  other: 'The trouble is another one now: it moved with what was changed.',
  same: 'The trouble is the same: it most likely sits elsewhere.',
  back: 'The trouble is back: it sits in this lead, its button or its place.',
  'not-back': 'It still starts: this lead and its place are most likely sound.',
  found: 'Something is not as it should be: put it right before the next start.',
  'switch-off': 'The rear switch is off, which keeps everything dark: switch it on for the next start.',
  'selector-wrong': 'The selector does not suit your mains: set it with the mains plug pulled.',
  'metal-in-port': 'Metal is in a rear socket: it may short it. Bend it clear with mains off.',
  hangs: 'A button hangs: free it, or leave its lead off and start by the other.',
  'no-click': 'A button does not click: it is worn, or has come off behind the front.',
  'plug-off': 'A plug is off or half in: push it home to its latch.',
  'plug-elsewhere': 'A plug is not where the manual has it: put it there before the next start.',
  'plug-turned': 'A plug is the wrong way round. Was it forced, leave it off and have it looked at.',
  'plug-other-kind': 'A plug or cable is of another kind than its place: leave it off.',
  'in-the-way': 'A part is in the way of a plug: take it off, seat the plug, put the part back.',
  burnt: 'Something is burnt: do not plug it in again, and have it looked at.',
  pinched: 'A cable is pinched: do not use it again.',
  'socket-broken': 'The socket is broken: use another drive or cable, and do not bend it back.',
  'cap-off': 'A cap is missing: put it where the manual has it.',
  'cap-elsewhere': 'A cap is in another place than the manual has it.',
  'cooler-loose': 'The cooler does not sit flat: it has to come off and go on anew.',
  'fan-stuck': 'A fan is blocked or stiff: free its blades, or change it.',
  'hub-unfed': 'A hub lacks its own supply, or its signal.',
  'signals-joined': 'Two fans tell their speed on one wire: only one may.',
  'wire-open': 'A wire of a fan is off or broken.',
  'came-loose': 'A part is not home: seat it until its latch closes.',
  'loose-metal': 'Loose metal lies there: take it away, and count the screws.',
  standoff: 'A standoff stands where the board has no hole: take it out.',
  'list-wrong': 'The list does not fit the header: go by what was measured.',
  'wires-exchanged': 'Wires of the plug are exchanged: leave it off until they are right.',
  'not-found': 'All as it should be: a look can miss things, so this only makes it less likely.',
  there: 'The voltage is there: mains, cable and standby are sound.',
  low: 'The voltage is low: something draws it down, or the supply cannot hold it.',
  starts: 'It starts.',
  'stays-off': 'It does not start.',
  none: 'No voltage: mains, the rear switch, the cable or the supply.',
  'closes-on-press': 'Open untouched, closed when pressed: the button and its wires are sound.',
  'always-closed': 'Closed untouched: the button is stuck, or its wires touch.',
  'never-closes': 'Open when pressed: the button or a wire is broken.',
  'now-and-then': 'It changes: the button is worn or a wire is loose.',
};

/** What a result says; of a trial that is named, what it says there. */
export function resultWords(result: ResultId, trial?: Trial): string {
  const own = trial && WORDS[trial.id]?.results?.[result];
  return own ?? RESULT_WORDS[result];
}

/** What “it works now” proves and what not; said whenever a trouble went away. */
export const WORKS_NOW = {
  proves: 'It works now: with this change it started, this time.',
  provesNot:
    'It does not prove that the part you changed was bad: plugs were moved, and a loose contact or a tripped supply recovers by that too. Change it back: only if the trouble returns was that the cause.',
} as const;

/** Why a trial is not to be made now. */
export const RISK_WORDS: Readonly<Record<Risk, string>> = {
  stop: 'Held back: after heat, smoke, sparks, a shock or something burnt nothing is tried.',
  danger:
    'Held back: the checks name a danger in this wiring. Do not connect the mains: put right what Wire shows first.',
  'may-burn': 'Held back: one of the likely faults may burn a part at the next start.',
  'put-right': 'Held back: something was found that is not right. Put that right before any other start.',
};

/** For all that stops, heat, smoke, sparks, shock or what is burnt: what must not be plugged in again. */
const NOT_AGAIN: Partial<Readonly<Record<Stop, string>>> = {
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
  burnt: 'the part that is burnt, what was plugged into it, and the supply',
};

/** What to do instead of any trial. */
export function stopWords(stops: readonly Stop[]): readonly string[] {
  const again = [...new Set(stops.flatMap((id) => NOT_AGAIN[id] ?? []))];
  return [
    'Stop. Pull the mains plug, touching only the plug and no metal of the case. If it burns or smokes on, leave it, warn others and call the fire service.',
    'Leave it unplugged. Start nothing more to find out: every start may burn another part.',
    ...again.map((what) => `Do not plug in again: ${what}.`),
    'Let a qualified person look at it. Never open the supply.',
  ];
}
