import type { Ohms, Volts } from '../base/units';
import type { Part } from '../document/lead';
import { parameterAt, type RangeEnd } from '../signals/parameters';
import type { PartKindId } from '../signals/part-kinds';
import type { Device, DiodeModel, NodeName } from './device';
import { THERMAL_VOLTS } from './diode';
import type { MachineState } from './machine-state';

const LED_IDEALITY = 2;
const LED_SERIES_OHMS: Ohms = 5;
const DATA_SHEET_AMPS = 0.01;
/** The largest reverse voltage that LED data sheets allow; where ours begins to conduct backwards. */
export const LED_REVERSE_VOLTS: Volts = 5;

/** A junction whose voltage at 10 mA is the data sheet's: the saturation current follows from it. */
function ledModel(forwardVolts: Volts): DiodeModel {
  const known = ledModels.get(forwardVolts);
  if (known) return known;
  const model = fitLed(forwardVolts);
  ledModels.set(forwardVolts, model);
  return model;
}

const ledModels = new Map<Volts, DiodeModel>();

function fitLed(forwardVolts: Volts): DiodeModel {
  const junctionVolts = forwardVolts - DATA_SHEET_AMPS * LED_SERIES_OHMS;
  return {
    saturationAmps: DATA_SHEET_AMPS / Math.expm1(junctionVolts / (LED_IDEALITY * THERMAL_VOLTS)),
    ideality: LED_IDEALITY,
    seriesOhms: LED_SERIES_OHMS,
    reverseLimitVolts: 30,
  };
}

/** A plain silicon junction: the protection inside a chip or across a supply. */
const SILICON: DiodeModel = { saturationAmps: 1e-12, ideality: 1.1, seriesOhms: 0.5 };

/** What the wires of one part are joined by inside it. */
export interface PartContext {
  readonly id: string;
  readonly part: Part;
  readonly node: (terminal: string) => NodeName;
  readonly state: MachineState;
  readonly end: RangeEnd;
}

type Maker = (part: PartContext) => readonly Device[];

/** Closed when it is pressed, stuck or not; never when it is broken. */
function isClosed({ condition }: Part, pressed: boolean): boolean {
  return condition === 'stuck' || (pressed && condition !== 'broken');
}

const switchClosedBy =
  (pressed: (state: MachineState) => boolean): Maker =>
  ({ id, part, node, state, end }) =>
    isClosed(part, pressed(state))
      ? [{ id, kind: 'resistor', a: node('a'), b: node('b'), ohms: parameterAt('switch-ohms', end) }]
      : [];

const never = switchClosedBy(() => false);
const always = switchClosedBy(() => true);

const led =
  (unstated: 'power-led-volts' | 'drive-led-volts'): Maker =>
  ({ id, part: { colour }, node, end }) => {
    const volts = parameterAt(colour ? `${colour}-led-volts` : unstated, end);
    return [{ id, kind: 'diode', a: node('anode'), b: node('cathode'), model: ledModel(volts) }];
  };

const resistor =
  (a: string, b: string, ohms: Parameters<typeof parameterAt>[0]): Maker =>
  ({ id, node, end }) => [{ id, kind: 'resistor', a: node(a), b: node(b), ohms: parameterAt(ohms, end) }];

/** A port with a device in it: its load, its pull-up, and the junctions that conduct when it is fed backwards. */
const usbPort: Maker = ({ id, node, state, end }) => {
  if (!state.attached) return [];
  const [vbus, ground] = [node('vbus'), node('ground')];
  const clamp = (line: string): readonly Device[] => [
    { id: `${id}.${line}.low`, kind: 'diode', a: ground, b: node(line), model: SILICON },
    { id: `${id}.${line}.high`, kind: 'diode', a: node(line), b: vbus, model: SILICON },
  ];
  return [
    { id, kind: 'resistor', a: vbus, b: ground, ohms: parameterAt('usb-device-ohms', end) },
    { id: `${id}.backwards`, kind: 'diode', a: ground, b: vbus, model: SILICON },
    {
      id: `${id}.pull`,
      kind: 'resistor',
      a: vbus,
      b: node('d-plus'),
      ohms: parameterAt('usb-device-pull-ohms', end),
    },
    ...clamp('d-minus'),
    ...clamp('d-plus'),
  ];
};

const hdAudio: Maker = ({ id, node, state, end }) => [
  {
    id: `${id}.presence`,
    kind: 'resistor',
    a: node('presence'),
    b: node('ground'),
    ohms: parameterAt('presence-panel-ohms', end),
  },
  {
    id: `${id}.mic-jack`,
    kind: 'switch',
    a: node('sense-send'),
    b: node('sense1-return'),
    closed: state.attached,
  },
  {
    id: `${id}.phones-jack`,
    kind: 'switch',
    a: node('sense-send'),
    b: node('sense2-return'),
    closed: state.attached,
  },
];

/** The jack's rest contacts hand the sound back to the rear socket while nothing is plugged in. */
const ac97Audio: Maker = ({ id, node, state }) => [
  {
    id: `${id}.right`,
    kind: 'switch',
    a: node('out-right'),
    b: node('return-right'),
    closed: !state.attached,
  },
  { id: `${id}.left`, kind: 'switch', a: node('out-left'), b: node('return-left'), closed: !state.attached },
];

/** The fan's own 5 V behind its PWM pull-up is made from its supply: a divider of the same level and resistance. */
const FAN_LOGIC_SHARE = 5 / 12;

const fan: Maker = ({ id, node, end }) => {
  const pull = parameterAt('fan-pull-ohms', end);
  const [supply, ground, pwm] = [node('supply'), node('ground'), node('pwm')];
  return [
    { id, kind: 'resistor', a: supply, b: ground, ohms: parameterAt('fan-ohms', end) },
    { id: `${id}.pwm`, kind: 'resistor', a: supply, b: pwm, ohms: pull / FAN_LOGIC_SHARE },
    { id: `${id}.logic`, kind: 'resistor', a: pwm, b: ground, ohms: pull / (1 - FAN_LOGIC_SHARE) },
    { id: `${id}.tach`, kind: 'diode', a: ground, b: node('tach'), model: SILICON },
  ];
};

const serialPort: Maker = () => [];

const ieee1394Port: Maker = ({ id, node, state, end }) =>
  state.attached
    ? [
        {
          id,
          kind: 'resistor',
          a: node('power'),
          b: node('ground'),
          ohms: parameterAt('usb-device-ohms', end),
        },
        { id: `${id}.backwards`, kind: 'diode', a: node('ground'), b: node('power'), model: SILICON },
      ]
    : [];

const MAKERS: Readonly<Record<PartKindId, Maker>> = {
  'power-switch': switchClosedBy((state) => state.held.includes('power')),
  'reset-switch': switchClosedBy((state) => state.held.includes('reset')),
  'electronic-power-switch': ({ id, part, node, state }) =>
    isClosed(part, state.held.includes('power'))
      ? [{ id, kind: 'diode', a: node('a'), b: node('b'), model: SILICON }]
      : [],
  'power-led': led('power-led-volts'),
  'two-colour-power-led': ({ id, node, end }) => {
    const model = ledModel(parameterAt('power-led-volts', end));
    return [
      { id, kind: 'diode', a: node('first'), b: node('second'), model },
      { id: `${id}.other`, kind: 'diode', a: node('second'), b: node('first'), model },
    ];
  },
  'drive-led': led('drive-led-volts'),
  'message-led': led('drive-led-volts'),
  speaker: resistor('plus', 'minus', 'speaker-ohms'),
  buzzer: ({ id, node, end }) => [
    {
      id,
      kind: 'diode',
      a: node('plus'),
      b: node('minus'),
      model: { ...SILICON, seriesOhms: parameterAt('buzzer-ohms', end) },
    },
  ],
  'case-open-switch': never,
  'key-lock': never,
  sensor: resistor('a', 'b', 'sensor-ohms'),
  'jumper-cap': always,
  'usb2-port': usbPort,
  'usb3-port': usbPort,
  'usb-c-port': usbPort,
  'ieee1394-port': ieee1394Port,
  'serial-port': serialPort,
  'hd-audio': hdAudio,
  'ac97-audio': ac97Audio,
  fan,
};

/** The devices inside a part, in a machine state and a end of the ranges. */
export function partDevices(context: PartContext): readonly Device[] {
  return MAKERS[context.part.kind](context);
}
