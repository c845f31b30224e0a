import type { Job } from './signal';

/** What the pins of a function are called. */
const JOB_NAMES: Readonly<Record<Job, string>> = {
  'power-switch': 'power switch',
  'reset-switch': 'reset',
  'drive-led': 'drive LED',
  'power-led': 'power LED',
  'message-led': 'message LED',
  speaker: 'speaker',
  'case-open': 'case-open',
  'key-lock': 'key lock',
  sensor: 'temperature sensor',
  'clear-settings': 'clear-settings',
  usb2: 'USB 2.0',
  usb3: 'USB 3',
  'usb-c': 'USB Type-C',
  ieee1394: '1394',
  serial: 'serial',
  'hd-audio': 'HD audio',
  'ac97-audio': 'AC’97 audio',
  fan: 'fan',
  'main-power': 'main power',
  'cpu-power': 'CPU power',
  'card-power': 'graphics card power',
  'drive-power': 'drive power',
  'sata-data': 'SATA data',
};

export function jobName(job: Job): string {
  return JOB_NAMES[job];
}
