import type { Build } from '../../document/build';
import type { Lead } from '../../document/lead';
import { connectorsOf } from '../../document/lookup';
import { partKindOf } from '../../signals/part-kinds';
import type { Job } from '../../signals/signal';
import { signalOf } from '../../signals/signals';

/** What cables are sorted by: what they carry. */
export const CABLE_FAMILIES = ['supply', 'data', 'fan', 'panel', 'usb', 'audio', 'other'] as const;
export type CableFamily = (typeof CABLE_FAMILIES)[number];

/** What a shell says; the open posts of a header say nothing. A test holds it to the shells of the library. */
export const SHELL_FAMILIES: Readonly<Record<string, CableFamily>> = {
  'main-power': 'supply',
  'cpu-power': 'supply',
  'card-power': 'supply',
  'peripheral-power': 'supply',
  'sata-power': 'supply',
  'supply-side': 'supply',
  'sata-data': 'data',
  'usb-c-front': 'usb',
};

const JOB_FAMILIES: Readonly<Record<Job, CableFamily>> = {
  'power-switch': 'panel',
  'reset-switch': 'panel',
  'drive-led': 'panel',
  'power-led': 'panel',
  'message-led': 'panel',
  speaker: 'panel',
  'case-open': 'panel',
  'key-lock': 'panel',
  sensor: 'panel',
  'clear-settings': 'panel',
  usb2: 'usb',
  usb3: 'usb',
  'usb-c': 'usb',
  ieee1394: 'usb',
  serial: 'usb',
  'hd-audio': 'audio',
  'ac97-audio': 'audio',
  fan: 'fan',
  'main-power': 'supply',
  'cpu-power': 'supply',
  'card-power': 'supply',
  'drive-power': 'supply',
  'sata-data': 'data',
};

/** True for what has no way to go: it joins pins where it sits, and nobody has measured it. */
export function isCap({ parts, plugs, cable }: Lead): boolean {
  if (plugs.length !== 1 || cable !== undefined) return false;
  return parts.every(({ kind }) => partKindOf(kind).job === 'clear-settings');
}

/**
 * What a cable carries: by the part at its end, else by the shells of its plugs, else by what the pins are
 * for that it sits on.
 */
export function cableFamilyOf(build: Build, lead: Lead): CableFamily {
  const [part] = lead.parts;
  if (part !== undefined) {
    return JOB_FAMILIES[partKindOf(part.kind).job];
  }
  const shells = lead.plugs.flatMap(({ family }) => SHELL_FAMILIES[family] ?? []);
  return shells[0] ?? familyOfSeats(build, lead) ?? 'other';
}

function familyOfSeats(build: Build, lead: Lead): CableFamily | undefined {
  const met = new Set(build.seats.filter((seat) => seat.lead === lead.id).map(({ connector }) => connector));
  const jobs = connectorsOf(build)
    .filter(({ id }) => met.has(id))
    .flatMap(({ pins }) =>
      pins.flatMap(({ signal, belongsTo }) => belongsTo ?? (signal && signalOf(signal).job) ?? []),
    );
  return jobs[0] && JOB_FAMILIES[jobs[0]];
}
