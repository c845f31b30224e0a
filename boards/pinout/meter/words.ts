import { listed } from '../../base/listed';
import { percent } from '../../base/percent';
import type { PinReading } from '../../document/pin-reading';
import { signalOf } from '../../signals/signals';
import type {
  Identification,
  LayoutOrigin,
  MeterContradiction,
  MeterProblem,
  MeterQuestion,
  MeterRisk,
  MeterVerdict,
  SignalChance,
} from './identification';

const NBSP = '\u00a0';

const pin = (label: string) => `pin${NBSP}${label}`;
const pins = (labels: readonly string[]) =>
  labels.length === 1 ? pin(labels[0] ?? '') : `pins${NBSP}${listed(labels)}`;

/** In which state of the machine a reading is taken, as a person reads it before the step itself. */
export type MeterState = 'unplugged' | 'standby' | 'running';

/** The state that a reading needs. */
export function stateFor(question: MeterQuestion | PinReading): MeterState {
  return question.kind === 'ohms' || question.kind === 'continuity' ? 'unplugged' : question.supply;
}

/** "Unplugged", "Standby", "Running": a mark beside a step. */
export const STATE_NAMES: Readonly<Record<MeterState, string>> = {
  unplugged: 'Unplugged',
  standby: 'Standby',
  running: 'Running',
};

/** How the machine is brought into a state, and what to mind in it. */
export const STATE_WORDS: Readonly<Record<MeterState, string>> = {
  unplugged: 'Unplug the machine from the mains, press its power button once, and wait half a minute.',
  standby: 'Plug the machine in and leave it off. It has standby power now.',
  running: 'Plug the machine in and start it. Stop at smell, smoke or heat.',
};

/** "Resistance from pin 5 to ground": the step as the name of a reading. */
export function questionName(question: MeterQuestion | PinReading): string {
  switch (question.kind) {
    case 'ohms':
      return `Resistance from ${pin(question.pin)} to ground`;
    case 'volts':
      return `Voltage at ${pin(question.pin)}, ${question.supply === 'standby' ? 'in standby' : 'running'}`;
    case 'continuity':
      return `Continuity between ${pins(question.pins)}`;
    case 'touch':
      return `A brief touch of ${pins(question.pins)}, ${question.supply === 'standby' ? 'in standby' : 'running'}`;
    case 'lamp':
      return `LED tester from ${pin(question.plus)} (+) to ${pin(question.minus)} (−), ${question.supply === 'standby' ? 'in standby' : 'running'}`;
  }
}

/** What to do, in a sentence or two. */
export function questionWords(question: MeterQuestion): string {
  switch (question.kind) {
    case 'ohms':
      return `Set the meter to ohms. Hold the black probe on bare metal of the board’s ground, such as a mounting hole, and the red probe on ${pin(question.pin)}.`;
    case 'volts':
      return `Set the meter to DC volts. Hold the black probe on bare metal of the case, and the red probe on ${pin(question.pin)} alone. A probe that slips joins two pins.`;
    case 'continuity':
      return `Set the meter to continuity. Hold one probe on ${pin(question.pins[0])} and the other on ${pin(question.pins[1])}.`;
    case 'touch':
      return question.supply === 'standby'
        ? `Join ${pins(question.pins)} for half a second with the tip of a screwdriver, and see whether the machine starts.`
        : `Save all work first: the machine may stop or start anew. Join ${pins(question.pins)} for half a second with the tip of a screwdriver.`;
    case 'lamp':
      return `Hold an LED with a resistor of 1${NBSP}kΩ between the two: its long leg on ${pin(question.plus)}, the other on ${pin(question.minus)}. Let the drive work for a moment while you look.`;
  }
}

const TOUCH_WORDS = {
  nothing: 'Nothing happened',
  started: 'It started',
  stopped: 'It stopped or went to sleep',
  reset: 'It started anew',
} as const;
const LAMP_WORDS = { dark: 'Dark', lit: 'Lit', flickers: 'Flickers with the drive' } as const;

/** What the machine did at a touch. */
export function touchWords(did: keyof typeof TOUCH_WORDS): string {
  return TOUCH_WORDS[did];
}

/** What an LED tester showed. */
export function lampWords(showed: keyof typeof LAMP_WORDS): string {
  return LAMP_WORDS[showed];
}

/** What a noted reading showed: "10.1 kΩ", "3.3 V", "joined". */
export function shownWords(reading: PinReading): string {
  switch (reading.kind) {
    case 'ohms':
      return reading.ohms === 'open' ? 'open' : ohmsText(reading.ohms);
    case 'volts':
      return `${figures(reading.volts)}${NBSP}V`;
    case 'continuity':
      return reading.joined ? 'joined' : 'not joined';
    case 'touch':
      return TOUCH_WORDS[reading.did].toLowerCase();
    case 'lamp':
      return LAMP_WORDS[reading.showed].toLowerCase();
  }
}

function figures(value: number): string {
  return String(Number(value.toPrecision(3))).replace('-', '−');
}

function ohmsText(ohms: number): string {
  if (ohms >= 1e6) return `${figures(ohms / 1e6)}${NBSP}MΩ`;
  return ohms >= 1e3 ? `${figures(ohms / 1e3)}${NBSP}kΩ` : `${figures(ohms)}${NBSP}Ω`;
}

/** Why a reading is not proposed. */
export function riskWords({ code, pin: label, chance }: MeterRisk): string {
  const likely = `${figures(Math.max(1, Math.round(chance * 100)))}${NBSP}%`;
  switch (code) {
    case 'may-be-supply':
      return `Not touched: ${pin(label)} may be a supply (${likely}). Joined to anything, it could burn a trace.`;
    case 'may-not-be-touched':
      return `Not touched: ${pin(label)} may be something that no switch of a case joins to ground (${likely}).`;
    case 'may-be-too-high':
      return `No LED tester here: ${pin(label)} may carry more than 6${NBSP}V (${likely}).`;
  }
}

/** How far the readings have come, in a sentence. */
export function verdictWords({ verdict, layouts, noneOfThese }: Identification): string {
  const share = (chance: number | undefined) => `${percent(chance ?? 0)}`;
  const words: Readonly<Record<MeterVerdict, string>> = {
    'no-readings': 'Nothing was measured yet.',
    open: `The most probable layout has ${share(layouts[0]?.chance)}. More readings will tell.`,
    identified: `One layout has ${share(layouts[0]?.chance)}.`,
    'two-remain':
      'Two layouts remain that no safe reading tells apart. Look for print on the board or a manual.',
    'several-remain':
      'Several layouts remain, and no safe reading tells more. Look for print on the board or a manual.',
    'none-of-these': `Most likely this is none of the known layouts (${share(noneOfThese)}). Each pin is told by itself.`,
  };
  return words[verdict];
}

/** "power LED +, or message LED +": a signal, and those no reading tells from it. */
export function signalWords({ signal, alike }: SignalChance): string {
  const name = (id: SignalChance['signal']) => signalOf(id).name;
  if (alike.length === 0) return name(signal);
  return `${name(signal)}, or ${[...new Set(alike.map(name))].join(' or ')}`;
}

/** "switches and LEDs, half a turn round": where a whole layout is from. */
export function originWords(origin: LayoutOrigin): string {
  if (origin.kind === 'panel') return 'switches and LEDs in an order of their own';
  const turned = {
    0: '',
    90: `, turned by 90${NBSP}degrees`,
    180: ', half a turn round',
    270: `, turned by 270${NBSP}degrees`,
  }[origin.turn];
  return `${origin.title}${turned}${origin.mirrored ? ', mirrored' : ''}`;
}

/** Which readings cannot all be true, and what to do. Readings are told by their name and what they showed. */
export function contradictionWords(
  contradiction: MeterContradiction,
  readings: readonly PinReading[],
): string {
  const told = contradiction.readings.flatMap((at) => {
    const reading = readings[at];
    return reading ? [`${questionName(reading)}: ${shownWords(reading)}`] : [];
  });
  switch (contradiction.why) {
    case 'no-pin-there':
      return `The sheet says that no pin stands at ${listed(contradiction.pins)}, and yet it was measured. Drop the reading, or put the pin on the sheet.`;
    case 'no-such-reading':
      return `No pin of a board reads like this: ${listed(told)}. Measure it again.`;
    case 'one-pin':
    case 'two-pins':
      return `These cannot all be true: ${told.join('; ')}. Measure them again.`;
  }
}

/** Why a connector cannot be identified, and what would help. */
export function problemWords(problem: MeterProblem): string {
  switch (problem.code) {
    case 'no-pins':
      return 'Every pin of this connector is marked as missing. Mark those that stand as pins first.';
    case 'too-many-pins':
      return `This connector has ${problem.pins} pins; up to ${problem.limit} can be told from readings. Measure its parts as connectors of their own.`;
  }
}

/** Cautions that stand where readings are taken. */
export const METER_CAUTIONS: readonly string[] = [
  'Measure resistance and continuity only with the machine unplugged from the mains.',
  'Touch bare metal of the case before you touch the board.',
  'Never measure inside a power supply.',
  'Where the board’s manual says otherwise, the manual is right. If you are not sure, ask a qualified person.',
];
