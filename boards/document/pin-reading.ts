import { z } from 'zod';
import { LabelZ } from './text';

/** States in which a pin is measured with the machine on. */
export const POWERED = ['standby', 'running'] as const;
/** What the machine did when two pins touched for a moment. */
export const TOUCH_RESULTS = ['nothing', 'started', 'stopped', 'reset'] as const;
/** What an LED with a resistor of 1 kΩ showed between two pins. */
export const LAMP_RESULTS = ['dark', 'lit', 'flickers'] as const;

const PairZ = z.tuple([LabelZ, LabelZ]);
/** How far the meter may be off, as a share of the reading. */
const ToleranceZ = z.number().min(0).max(1).describe('share of the reading: 0.05 for 5 %');
const DoubtZ = z.number().min(0).max(1).describe('chance that it was misread: 0.1 for one in ten');
const doubt = DoubtZ.optional();
const tolerance = ToleranceZ.optional();

/** One thing that was measured or tried on a connector, as the person notes it. */
export const PinReadingZ = z.discriminatedUnion('kind', [
  /** From the pin to ground, board unplugged. */
  z.strictObject({
    kind: z.literal('ohms'),
    pin: LabelZ,
    ohms: z.union([z.literal('open'), z.number().min(0).max(1e9)]),
    tolerance,
    doubt,
  }),
  /** From the pin to ground, machine in standby or running. */
  z.strictObject({
    kind: z.literal('volts'),
    pin: LabelZ,
    supply: z.enum(POWERED),
    volts: z.number().min(-100).max(100),
    tolerance,
    doubt,
  }),
  /** Whether the meter beeps between two pins, board unplugged. */
  z.strictObject({ kind: z.literal('continuity'), pins: PairZ, joined: z.boolean(), doubt }),
  /** What the machine did when two pins were joined for a moment. */
  z.strictObject({
    kind: z.literal('touch'),
    pins: PairZ,
    supply: z.enum(POWERED),
    did: z.enum(TOUCH_RESULTS),
    doubt,
  }),
  /** An LED with a resistor of 1 kΩ from one pin (plus) to another (minus). */
  z.strictObject({
    kind: z.literal('lamp'),
    plus: LabelZ,
    minus: LabelZ,
    supply: z.enum(POWERED),
    showed: z.enum(LAMP_RESULTS),
    doubt,
  }),
]);

export type PinReading = z.infer<typeof PinReadingZ>;
export type Powered = (typeof POWERED)[number];
export type TouchResult = (typeof TOUCH_RESULTS)[number];
export type LampResult = (typeof LAMP_RESULTS)[number];

/** The pins that a reading names: one, or two. */
export function pinsOfReading(reading: PinReading): readonly string[] {
  switch (reading.kind) {
    case 'ohms':
    case 'volts':
      return [reading.pin];
    case 'continuity':
    case 'touch':
      return reading.pins;
    case 'lamp':
      return [reading.plus, reading.minus];
  }
}

/** The same reading with other labels for its pins; undefined where one of them has none any more. */
export function relabelled(
  reading: PinReading,
  labelFor: (label: string) => string | undefined,
): PinReading | undefined {
  const [first, second] = pinsOfReading(reading).map(labelFor);
  if (first === undefined) return undefined;
  if (reading.kind === 'ohms' || reading.kind === 'volts') return { ...reading, pin: first };
  if (second === undefined) return undefined;
  return reading.kind === 'lamp'
    ? { ...reading, plus: first, minus: second }
    : { ...reading, pins: [first, second] };
}
