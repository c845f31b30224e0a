import { circuitOf } from '../../circuit/circuit';
import { type Button, type MachineState, RESTING, RUNNING } from '../../circuit/machine-state';
import type { Build } from '../../document/build';
import { leadsOf } from '../../document/lookup';
import { type CheckContext, contextOf } from '../../findings/context';
import { RULES } from '../../findings/rules/index';
import { type Joint, jointsOf } from '../../fit/joints';
import { partKindOf } from '../../signals/part-kinds';
import { signalOf } from '../../signals/signals';
import type { Input, Machine } from '../start-chain/machine';
import type { Signs } from '../start-chain/signs-of-end';
import { type Way, way } from './fault';
import { isWatched, lightKindsOf, pullAt, type Showing, showingOf, without } from './showing';

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

/** What the rules find of some leads; whatever is wrong with others is not asked. */
interface Found {
  readonly shorted: boolean;
  readonly clearing: boolean;
}

/**
 * What a build would do and show by its wiring alone: the inputs and lights from the circuit solver, harm
 * from the findings. `leads` are those whose seats are in question. Solves the whole build.
 */
export function consequencesOf(build: Build, leads: readonly string[]): readonly Way[] {
  return waysFrom(build, leads, [showingOf(build)], foundOf(contextOf(build), leads));
}

/**
 * The same for many wirings of the same leads: what the rest of the build shows is worked out once, and of
 * each wiring only what those leads add.
 *
 * @param build the build, in which those leads sit anyhow
 * @returns what follows from a build of these leads alone, seated as they are in question
 */
export function consequencesBeside(build: Build, leads: readonly string[]): (own: Build) => readonly Way[] {
  const rest = remembered(showingOf(without(build, leads)));
  const known = new Map<string, readonly Way[]>();
  return (own) => {
    const showing = showingOf(own);
    const found = jointsOf(own).some(mayBeFound)
      ? foundOf(withoutAdvice(contextOf(own)), leads)
      : { shorted: false, clearing: false };
    if (showing.touchesInput) return waysFrom(build, leads, [rest, showing], found);
    // Most wirings leave the inputs as they are: then lights, speed and harm are all that counts.
    const key = JSON.stringify([showing.lights, showing.tellsSpeed, found]);
    const ways = known.get(key) ?? waysFrom(build, leads, [rest, showing], found);
    known.set(key, ways);
    return ways;
  };
}

/** Whether any of the rules that are asked could find something at a wire end: a supply, 1394, clear pins, a bare cable. */
function mayBeFound({ part, pin }: Joint): boolean {
  if (part === undefined || partKindOf(part.kind).job === 'clear-settings') return true;
  if (pin === undefined) return false;
  const { nature, job = pin.belongsTo } = signalOf(pin.signal ?? 'unknown');
  return nature === 'supply' || job === 'ieee1394' || job === 'clear-settings';
}

function waysFrom(
  build: Build,
  leads: readonly string[],
  showings: readonly Showing[],
  { shorted, clearing }: Found,
): readonly Way[] {
  const machine: Partial<Machine> = {
    power: inputOf(showings, 'power'),
    reset: inputOf(showings, 'reset'),
    ...(isFanSeen(build, showings) ? {} : { processorFan: 'not-seen' }),
    ...(clearing ? { settings: 'being-cleared' } : {}),
  };
  const seen = { ...lightSigns(build, showings), ...buttonSigns(showings) };
  const signs = { ...seen, ...socketSigns(build, leads) };
  if (!shorted) return [way(1, machine, signs)];
  const burnt: Signs = { 'melted-plug': 0.35, smoke: 0.3, smell: 0.35, 'hot-part': 0.3, spark: 0.15 };
  const overCurrent: Signs = { 'usb-over-current': 0.3, 'usb-device-killed': 0.15 };
  return [
    // A machine that trips has no socket to try.
    way(2, { ...machine, rails: 'shorted' }, { ...seen, smell: 0.2, smoke: 0.15 }),
    way(2, machine, { ...signs, ...burnt }),
    way(2, machine, { ...signs, ...overCurrent }),
  ];
}

function foundOf(context: CheckContext, leads: readonly string[]): Found {
  const found = ASKED.flatMap((rule) => rule.check(context)).filter((finding) =>
    finding.leads.some((lead) => leads.includes(lead)),
  );
  return {
    shorted: found.some(({ code, severity }) => severity === 'danger' && SHORTS.has(code)),
    clearing: found.some(({ code }) => code === 'on-clear-settings'),
  };
}

/** Only whether something is found is asked here, not what to do about it, nor how much would flow. */
function withoutAdvice({ build, plugs, parts, joints }: CheckContext): CheckContext {
  const nowhere = () => [];
  const circuit = circuitOf({ ...build, seats: NO_SEATS });
  return {
    build,
    plugs,
    parts,
    joints,
    loose: [],
    circuit,
    properSeats: nowhere,
    properSeatsWhenBare: nowhere,
  };
}

const NO_SEATS: Build['seats'] = [];

/** The inputs of a share in the states that are asked for, each worked out once. */
function remembered(showing: Showing): Showing {
  const known = new Map<string, ReturnType<Showing['volts']>>();
  return {
    ...showing,
    volts: (input, state) => {
      const key = `${input} ${state.supply} ${state.held.join()}`;
      if (!known.has(key)) known.set(key, showing.volts(input, state));
      return known.get(key);
    },
  };
}

/** Power is asked while the machine stands by, reset while it runs. */
function inputOf(showings: readonly Showing[], input: Button): Input {
  const state: MachineState = input === 'power' ? RESTING : RUNNING;
  return {
    rest: pullAt(showings, input, state),
    pressed: pullAt(showings, input, { ...state, held: [input] }),
  };
}

/** A reset button on the power pins starts the machine, and power on the reset pins does nothing. */
function buttonSigns(showings: readonly Showing[]): Signs {
  const starts = pullAt(showings, 'power', { ...RESTING, held: ['reset'] }) !== 'free';
  const rests = pullAt(showings, 'power', RESTING) === 'free';
  return starts && rests ? { 'reset-starts': 0.9, 'power-button-dead': 0.6 } : {};
}

function lightSigns(build: Build, showings: readonly Showing[]): Signs {
  const signs: Record<string, number> = {};
  const kinds = lightKindsOf(build);
  for (const [kind, light] of Object.entries(LIGHT)) {
    if (!kinds.has(kind)) continue;
    const those = showings.flatMap(({ lights }) => lights.filter((each) => each.kind === kind));
    const looks = those.map(({ running, busy }) => (light === 'power-light' ? running : busy));
    if (!looks.some((look) => look !== 'dark')) signs[`${light}-dark`] = 0.9;
    else if (light === 'power-light' && !looks.includes('lit')) signs['power-light-dim'] = 0.8;
    if (light === 'power-light' && those.some(({ resting }) => resting !== 'dark'))
      signs['power-light-always'] = 0.85;
  }
  return signs;
}

/** Whether a watched header is told a speed; true on a board that watches none. */
function isFanSeen({ board }: Build, showings: readonly Showing[]): boolean {
  return !board.connectors.some(isWatched) || showings.some(({ tellsSpeed }) => tellsSpeed);
}

function socketSigns(build: Build, leads: readonly string[]): Signs {
  const kinds = leadsOf(build)
    .filter(({ id }) => leads.includes(id))
    .flatMap(({ parts }) => parts.map(({ kind }) => kind));
  return Object.assign({}, ...kinds.map((kind) => SOCKET_SIGNS[kind] ?? {}));
}
