import type { Ohms, Volts } from '../../base/units';
import { CORNERS, type Corner, type Span } from '../../circuit/corner';
import type { Device, Netlist, NodeName } from '../../circuit/device';
import { type Element, netlistOf } from '../../circuit/elements';
import type { MachineState } from '../../circuit/machine-state';
import { solve } from '../../circuit/solve';

/** What a meter is set to. */
export type MeterMode = 'ohms' | 'diode';

/**
 * A hand meter as a source behind a resistance: about a milliamp into a short, 3 V at most on its diode
 * range, half a volt on ohms, where no junction conducts. Common practice, no source: meters differ.
 */
const SOURCES: Readonly<Record<MeterMode, { readonly volts: Volts; readonly ohms: Ohms }>> = {
  ohms: { volts: 0.5, ohms: 500 },
  diode: { volts: 3, ohms: 2_000 },
};

/** Above this a hand meter shows that nothing conducts. Common practice, no source. */
const OPEN_OHMS: Ohms = 20e6;
/** What of its own voltage a meter on diode test shows as open. Common practice, no source. */
const OPEN_SHARE = 0.95;

/** What a meter shows: ohms or volts, or that nothing conducts. */
type Shown = { readonly kind: 'value'; readonly value: number } | { readonly kind: 'open' };

/** The meter as a device between two nodes: red is the plus side. */
function meterDevice(mode: MeterMode, red: NodeName, black: NodeName): Device {
  return { id: METER, kind: 'voltage', a: red, b: black, ...SOURCES[mode] };
}

const METER = 'meter';

/** The netlist of some elements with the meter on them. */
export function measuredNetlist(
  elements: readonly Element[],
  { mode, red, black, state }: Reading,
  corner: Corner,
): Netlist {
  return [...netlistOf(elements, state, corner), meterDevice(mode, red, black)];
}

/** One reading to be taken. */
export interface Reading {
  readonly mode: MeterMode;
  readonly red: NodeName;
  readonly black: NodeName;
  readonly state: MachineState;
}

/** What the meter shows over the ranges of all values: the usual, and the ends. An open one is Infinity. */
export function shownBy(elements: readonly Element[], reading: Reading): Span {
  const values = CORNERS.map((corner) => {
    const shown = shownAt(elements, reading, corner);
    return shown.kind === 'open' ? Number.POSITIVE_INFINITY : shown.value;
  });
  return { usual: values[0] ?? 0, low: Math.min(...values), high: Math.max(...values) };
}

function shownAt(elements: readonly Element[], reading: Reading, corner: Corner): Shown {
  const { volts, amps } = solve(measuredNetlist(elements, reading, corner));
  const source = SOURCES[reading.mode];
  // What the meter gives flows out of its plus side and so counts as negative through it.
  const flowing = -(amps.get(METER) ?? 0);
  const across =
    flowing === 0 ? source.volts : (volts.get(reading.red) ?? 0) - (volts.get(reading.black) ?? 0);
  if (reading.mode === 'diode')
    return across >= OPEN_SHARE * source.volts ? { kind: 'open' } : { kind: 'value', value: across };
  const ohms = flowing <= 0 ? Number.POSITIVE_INFINITY : across / flowing;
  return ohms >= OPEN_OHMS ? { kind: 'open' } : { kind: 'value', value: ohms };
}
