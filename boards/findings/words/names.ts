import { listed } from '../../base/listed';
import type { Build } from '../../document/build';
import type { Part } from '../../document/lead';
import { anyConnectorOf, leadOf, type PinRef, type PlugRef, pinOf } from '../../document/lookup';
import { connectorName } from '../../document/names';
import { type SignalId, signalOf } from '../../signals/signals';

const NBSP = '\u00a0';

/** "pin 6", "pins 6 and 8" or "pins 1 to 7, 9 and 10". */
export function pinList(labels: readonly string[]): string {
  return `${labels.length === 1 ? 'pin' : 'pins'}${NBSP}${listed(runs(labels))}`;
}

/** Labels in counting order, three or more in a row told by the first and the last. */
function runs(labels: readonly string[]): readonly string[] {
  const sorted = labels.toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true }));
  const grouped: string[][] = [];
  for (const label of sorted) {
    const run = grouped.at(-1);
    if (run && Number(label) === Number(run.at(-1)) + 1) run.push(label);
    else grouped.push([label]);
  }
  return grouped.flatMap((run) => (run.length > 2 ? [`${run[0]} to${NBSP}${run.at(-1)}`] : run));
}

/** "pins 6 and 8 of F_PANEL"; of several headers one after the other. */
export function pinsOf(build: Build, pins: readonly PinRef[]): string {
  const byConnector = new Map<string, string[]>();
  for (const { connector, pin } of pins)
    byConnector.set(connector, [...(byConnector.get(connector) ?? []), pin]);
  return listed(
    [...byConnector].map(([id, labels]) => `${pinList([...new Set(labels)])} of ${connectorName(build, id)}`),
  );
}

/** "pin 3 (drive LED −)". */
export function pinWithJob(build: Build, { connector: id, pin: label }: PinRef): string {
  const connector = anyConnectorOf(build, id);
  const signal = connector && pinOf(connector, label).signal;
  return `pin${NBSP}${label} (${signalName(signal ?? 'unknown')})`;
}

export function signalName(id: SignalId): string {
  return unbroken(signalOf(id).name);
}

/** A name with its number and unit kept on one line: "USB +5 V". */
export function unbroken(name: string): string {
  return name.replaceAll(/(\d) (V)\b/g, `$1${NBSP}$2`);
}

/** "+5 V", "+12 V", "−12 V". */
export function voltsText(volts: number): string {
  return `${volts < 0 ? '−' : '+'}${Math.abs(volts)}${NBSP}V`;
}

/** A part of a lead; a finding's part is always there. */
export function partOfLead(build: Build, lead: string, part: string): Part {
  const found = leadOf(build, lead)?.parts.find(({ id }) => id === part);
  if (!found) throw new Error(`No part ${part} in ${lead}`);
  return found;
}

/** Which lead and plug, as a person calls it: the lead's name, and the plug's print where the lead has more than one. */
export function plugText(build: Build, ref: PlugRef): string {
  const lead = leadOf(build, ref.lead);
  if (!lead) return ref.lead;
  const plug = lead.plugs.find(({ id }) => id === ref.plug);
  return lead.plugs.length > 1 && plug?.print ? `${lead.name} (${plug.print})` : lead.name;
}
