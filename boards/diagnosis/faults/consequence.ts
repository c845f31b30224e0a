import { circuitOf } from '../../circuit/circuit';
import { BUSY, type MachineState, RESTING, RUNNING } from '../../circuit/machine-state';
import { inputPins, inputVolts } from '../../circuit/readings/inputs';
import { brighterGlow, lampsOf } from '../../circuit/readings/lamps';
import { levelOf } from '../../circuit/readings/level';
import type { Build } from '../../document/build';
import { leadsOf } from '../../document/lookup';
import { contextOf } from '../../findings/context';
import { RULES } from '../../findings/rules/index';
import { jointsOf } from '../../fit/joints';
import type { Input, Machine, Pull } from '../start-chain/machine';
import type { Signs } from '../start-chain/signs-of-end';
import { type Way, way } from './fault';

const PULL = { low: 'held', depends: 'now-and-then', high: 'free' } as const satisfies Record<string, Pull>;

const LIGHT = {
  'power-led': 'power-light',
  'two-colour-power-led': 'power-light',
  'drive-led': 'drive-light',
};

/** What is noticed of a socket whose plug is not where it belongs. Common practice, no source. */
const SOCKET_SIGNS: Readonly<Record<string, Signs>> = {
  'usb2-port': { 'usb-missing': 0.8, 'usb-unknown': 0.5 },
  'usb3-port': { 'usb-missing': 0.8, 'usb-unknown': 0.4 },
  'usb-c-port': { 'usb-missing': 0.8 },
  'hd-audio': {
    'front-audio-missing': 0.85,
    'rear-not-muted': 0.3,
    'rear-silent': 0.15,
    'front-audio-noise': 0.1,
  },
  'ac97-audio': { 'front-audio-missing': 0.7, 'rear-not-muted': 0.2, 'rear-silent': 0.4 },
  speaker: { 'no-beep': 0.8, buzz: 0.1 },
};

/** Rules that find a supply with a way it must not have. */
const SHORTS: ReadonlySet<string> = new Set([
  'supply-joined',
  'supply-on-wire',
  'pins-joined',
  'usb-on-1394',
]);

/** The few rules that say more than the circuit alone; the others would only cost time. */
const ASKED = RULES.filter(({ id }) => SHORTS.has(id) || id === 'on-clear-settings');

/**
 * What a build would do and show by its wiring alone: the inputs and lights from the circuit solver, harm
 * from the findings. `leads` are those whose seats are in question.
 */
export function consequencesOf(build: Build, leads: readonly string[]): readonly Way[] {
  const machine: Partial<Machine> = { power: inputOf(build, 'power'), reset: inputOf(build, 'reset') };
  const context = contextOf(build);
  const found = ASKED.flatMap((rule) => rule.check(context)).filter((finding) =>
    finding.leads.some((lead) => leads.includes(lead)),
  );
  const clearing = found.some(({ code }) => code === 'on-clear-settings');
  const watched: Partial<Machine> = isFanWatched(build) ? {} : { processorFan: 'not-seen' };
  const whole = { ...machine, ...watched, ...(clearing ? { settings: 'being-cleared' as const } : {}) };
  const signs = { ...lightSigns(build), ...socketSigns(build, leads), ...buttonSigns(build) };
  const harm = found.filter(({ code, severity }) => severity === 'danger' && SHORTS.has(code));
  if (harm.length === 0) return [way(1, whole, signs)];
  const burnt: Signs = { 'melted-plug': 0.35, smoke: 0.3, smell: 0.35, 'hot-part': 0.3, spark: 0.15 };
  const overCurrent: Signs = { 'usb-over-current': 0.3, 'usb-device-killed': 0.15 };
  return [
    way(2, { ...whole, rails: 'shorted' }, { ...signs, smell: 0.2, smoke: 0.15 }),
    way(2, whole, { ...signs, ...burnt }),
    way(2, whole, { ...signs, ...overCurrent }),
  ];
}

function pullAt(build: Build, input: 'power' | 'reset', state: MachineState): Pull {
  const pins = inputPins(build.board.connectors)[input];
  return PULL[levelOf(inputVolts(circuitOf(build), pins, state))];
}

/** Power is asked while the machine stands by, reset while it runs. */
function inputOf(build: Build, input: 'power' | 'reset'): Input {
  const state = input === 'power' ? RESTING : RUNNING;
  return { rest: pullAt(build, input, state), pressed: pullAt(build, input, { ...state, held: [input] }) };
}

/** A reset button on the power pins starts the machine, and power on the reset pins does nothing. */
function buttonSigns(build: Build): Signs {
  const starts = pullAt(build, 'power', { ...RESTING, held: ['reset'] }) !== 'free';
  const rests = pullAt(build, 'power', RESTING) === 'free';
  return starts && rests ? { 'reset-starts': 0.9, 'power-button-dead': 0.6 } : {};
}

function lightSigns(build: Build): Signs {
  const signs: Record<string, number> = {};
  const lamps = lampsOf(build, circuitOf(build));
  for (const [kind, light] of Object.entries(LIGHT)) {
    const those = lamps.filter((lamp) => lamp.kind === kind);
    if (!leadsOf(build).some(({ parts }) => parts.some((part) => part.kind === kind))) continue;
    const looks = those.map((lamp) => brighterGlow(lamp, light === 'power-light' ? RUNNING : BUSY).usual);
    if (!looks.some((look) => look !== 'dark')) signs[`${light}-dark`] = 0.9;
    else if (light === 'power-light' && !looks.includes('lit')) signs['power-light-dim'] = 0.8;
    const off = those.some((lamp) => brighterGlow(lamp, RESTING).usual !== 'dark');
    if (off && light === 'power-light') signs['power-light-always'] = 0.85;
  }
  return signs;
}

/** Whether a fan tells its speed to the header that the board's print names for the processor; true where there is none. */
function isFanWatched(build: Build): boolean {
  const watched = build.board.connectors.filter(
    ({ print, pins }) => /cpu/i.test(print) && pins.some(({ signal }) => signal === 'fan-tach'),
  );
  if (watched.length === 0) return true;
  const told = jointsOf(build).filter(
    ({ terminal, pin }) => terminal?.id === 'tach' && pin?.signal === 'fan-tach',
  );
  return watched.some(({ id }) => told.some(({ connector }) => connector.id === id));
}

function socketSigns(build: Build, leads: readonly string[]): Signs {
  const kinds = leadsOf(build)
    .filter(({ id }) => leads.includes(id))
    .flatMap(({ parts }) => parts.map(({ kind }) => kind));
  return Object.assign({}, ...kinds.map((kind) => SOCKET_SIGNS[kind] ?? {}));
}
