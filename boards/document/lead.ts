import { z } from 'zod';
import { LAMP_COLOURS } from '../signals/lamp-colours';
import { PART_KIND_IDS } from '../signals/part-kinds';
import { CableZ } from './cable';
import { ChannelZ, FamilyZ, SIDES } from './connector';
import { GridZ } from './grid';
import { LIMITS } from './limits';
import { FanRatingZ } from './rating';
import { IdZ, LabelZ, LineZ, NameZ, NotesZ, shaped } from './text';

/** The colour words of IEC 60757. */
export const WIRE_COLOURS = [
  'black',
  'brown',
  'red',
  'orange',
  'yellow',
  'green',
  'blue',
  'violet',
  'grey',
  'white',
  'pink',
  'turquoise',
] as const;

export const WireColourZ = z.enum(WIRE_COLOURS);

/** What is wrong with a switch: closed without being pressed, or never closed. */
export const CONDITIONS = ['stuck', 'broken'] as const;

export const LampColourZ = z.enum(LAMP_COLOURS);
export const ConditionZ = z.enum(CONDITIONS);

/** What the wires of a lead end at: a switch, an LED, a USB socket. */
const PartZ = z.strictObject({
  id: IdZ,
  kind: z.enum(PART_KIND_IDS),
  /** Which of several like ports this one is made for. */
  channel: ChannelZ.optional(),
  name: LineZ.optional(),
  /** Of an LED, where it is known. */
  colour: LampColourZ.optional(),
  condition: ConditionZ.optional(),
  /** Of a fan, where its label was read. */
  fan: FanRatingZ.optional(),
});

/** A plug as it lies on the pins, seen from above with the wires towards you. */
const PlugZ = z.strictObject({
  id: IdZ,
  /** Text moulded or printed on it. */
  print: LineZ,
  family: FamilyZ,
  grid: GridZ,
  /** Holes filled so that no pin enters: the key. */
  blocked: z.array(LabelZ).max(LIMITS.gridSide).optional(),
  /** The hole with the moulded triangle or the printed plus. */
  mark: LabelZ.optional(),
  /** The side with the rib that has to face the slot or the ramp. */
  rib: z.enum(SIDES).optional(),
});

/** One end of a wire: "plug.hole" or "part.terminal". */
const EndZ = shaped(
  new RegExp(`^[a-z0-9-]{1,${LIMITS.idLength}}\\.[A-Za-z0-9+-]{1,20}$`),
  'a wire end: "plug.hole" or "part.terminal"',
);

const WireZ = z.strictObject({
  from: EndZ,
  to: EndZ,
  colour: WireColourZ,
  stripe: WireColourZ.optional(),
});

/** A part with its wires and plugs, or a cable: plugs joined by wires. */
export const LeadZ = z.strictObject({
  id: IdZ,
  name: NameZ,
  parts: z.array(PartZ).max(LIMITS.partsPerLead),
  plugs: z.array(PlugZ).min(1).max(LIMITS.plugsPerLead),
  wires: z.array(WireZ).max(LIMITS.wiresPerLead),
  /** How thick and how long it is, where somebody has measured. */
  cable: CableZ.optional(),
  /** Left off on purpose; the checks stay silent about it. */
  setAside: z.literal(true).optional(),
  notes: NotesZ.optional(),
});

export type WireColour = z.infer<typeof WireColourZ>;
export type Part = z.infer<typeof PartZ>;
export type Plug = z.infer<typeof PlugZ>;
export type Wire = z.infer<typeof WireZ>;
export type Lead = z.infer<typeof LeadZ>;

/** The owner and the point of a wire end. */
export function splitEnd(end: string): { readonly owner: string; readonly point: string } {
  const dot = end.indexOf('.');
  return { owner: end.slice(0, dot), point: end.slice(dot + 1) };
}
