import type { Span } from '../../circuit/corner';
import type { Build } from '../../document/build';
import { leadOf, type PinRef } from '../../document/lookup';
import { connectorName } from '../../document/names';
import { ohmsText } from '../../findings/words/numbers';
import { partKindOf } from '../../signals/part-kinds';
import type { Cause, ExpectedReading, MeterStep } from './meter-steps';

const NBSP = '\u00a0';

/** What the step is about: "Power switch: is it a switch?" */
export function meterTitle(build: Build, { kind, lead, part, readings }: MeterStep): string {
  if (kind === 'supply') {
    const at = readings[0]?.red.connector;
    return `No short at ${at === undefined ? 'the header' : connectorName(build, at)}`;
  }
  return `Measure the ${partName(build, lead, part)}`;
}

/** Where the probes go and what has to be seen, one sentence a reading. */
export function readingWords(build: Build, reading: ExpectedReading): string {
  return `${probesWords(build, reading)}: ${expectedWords(reading)}.`;
}

/** What the meter is set to, where its probes go and what is held meanwhile, without a full stop. */
export function probesWords(build: Build, { when, mode, red, black }: ExpectedReading): string {
  // The header is named once where both probes are on it.
  const first = red.connector === black.connector ? `pin${NBSP}${red.pin}` : pinText(build, red);
  const probes =
    mode === 'diode'
      ? `Diode test, red on ${first}, black on ${pinText(build, black)}`
      : `Ohms, one probe on ${first}, the other on ${pinText(build, black)}`;
  const state = when === 'released' ? ', button released' : when === 'pressed' ? ', button held' : '';
  return `${probes}${state}`;
}

/** What it has to show: "less than 10 Ω", "1.4 V to 2.1 V", "open". */
export function expectedWords({ mode, expected }: ExpectedReading): string {
  return spanWords(mode, expected);
}

/** What another reading would mean; empty where a meter could not tell. */
export function otherwiseWords({ mode, otherwise }: ExpectedReading): readonly string[] {
  return otherwise.map(
    ({ cause, shown }) => `If it shows ${spanWords(mode, shown)}: ${CAUSES[causeKey(cause)]}.`,
  );
}

const CAUSES = {
  stuck: 'the switch is stuck, or its wires touch',
  broken: 'the switch never closes, or a wire is broken',
  off: 'the plug is not on these pins, or a wire is broken',
  turned: 'the plug is the other way round',
} as const;

function causeKey(cause: Cause): keyof typeof CAUSES {
  return cause.kind === 'condition' ? cause.condition : cause.kind;
}

function spanWords(mode: ExpectedReading['mode'], { low, high }: Span): string {
  if (low === Number.POSITIVE_INFINITY) return 'open';
  if (mode === 'diode') {
    const volts = (value: number) => `${value.toFixed(1)}${NBSP}V`;
    return high === Number.POSITIVE_INFINITY
      ? `${volts(low)} or more, or open on a meter with little voltage`
      : `${volts(low)} to ${volts(high)}`;
  }
  if (high === Number.POSITIVE_INFINITY) return `more than ${ohmsText(low)}`;
  return low < 1 ? `less than ${ohmsText(high)}` : `${ohmsText(low)} to ${ohmsText(high)}`;
}

function pinText(build: Build, { connector, pin }: PinRef): string {
  return `pin${NBSP}${pin} of ${connectorName(build, connector)}`;
}

function partName(build: Build, lead: string | undefined, part: string | undefined): string {
  const found = lead === undefined ? undefined : leadOf(build, lead)?.parts.find(({ id }) => id === part);
  return found ? (found.name ?? partKindOf(found.kind).name) : 'part';
}
