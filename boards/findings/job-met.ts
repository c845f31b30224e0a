import type { Job } from '../signals/signal';
import type { CheckedPlug } from './context';
import { jobAt, type SeatedPart } from './seated-part';

/** The parts of a plug that are made for one of the jobs and have a wire on a pin of one of the others. */
export function partsMeeting(
  { parts }: CheckedPlug,
  made: readonly Job[],
  met: readonly Job[],
): readonly SeatedPart[] {
  return parts.filter(
    ({ kind, legs }) =>
      made.includes(kind.job) &&
      legs.some((leg) => {
        const job = jobAt(leg);
        return job !== undefined && met.includes(job);
      }),
  );
}

export const USB_JOBS: readonly Job[] = ['usb2', 'usb3', 'usb-c'];

/** The small leads of a case that have no bus: switches, LEDs, speaker, sensor. */
export const PANEL_JOBS: readonly Job[] = [
  'power-switch',
  'reset-switch',
  'drive-led',
  'power-led',
  'message-led',
  'speaker',
  'case-open',
  'key-lock',
  'sensor',
];
