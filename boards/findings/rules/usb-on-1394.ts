import { atPlug, plugOnConnector } from '../about';
import { partsMeeting, USB_JOBS } from '../job-met';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * A USB lead must not sit on a 1394 header: shape and key are the same, and +12 V stands there.
 *
 * Good: a two-port USB block on a USB 2.0 header.
 * Bad: the same block on the 1394 header beside it: its ground wires would meet +12 V.
 */
export const usbOn1394: Rule<'usb-on-1394'> = {
  id: 'usb-on-1394',
  source: 'USB 2.0 and 1394a headers as listed in board product guides; a board manual forbids the exchange',
  explains: [
    'supply-on-wire',
    'supply-reversed',
    'places-exchanged',
    'ports-mixed',
    'wrong-pins',
    'wrong-function',
    'shifted',
    'reversed',
  ],
  check: (context) =>
    context.plugs
      .filter((plug) => partsMeeting(plug, USB_JOBS, ['ieee1394']).length > 0)
      .map((plug) => ({
        code: 'usb-on-1394',
        severity: 'danger',
        ...atPlug(plug),
        data: plugOnConnector(plug),
        remedies: remediesFor(context, plug.ref),
      })),
};
