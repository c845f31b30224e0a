import { atPlug, plugOnConnector } from '../about';
import { partsMeeting, USB_JOBS } from '../job-met';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';

/**
 * A 1394 lead must not sit on a USB header: shape and key are the same, the supply pins are not.
 *
 * Good: a 1394 block on the 1394 header.
 * Bad: the same block on a USB 2.0 header: USB's +5 V would meet a data pair, its grounds the supply wires.
 */
export const ieee1394OnUsb: Rule<'ieee1394-on-usb'> = {
  id: 'ieee1394-on-usb',
  source: 'USB 2.0 and 1394a headers as listed in board product guides; a board manual forbids the exchange',
  explains: [
    'supply-on-wire',
    'supply-reversed',
    'places-exchanged',
    'ground-on-over-current',
    'wrong-pins',
    'wrong-function',
    'shifted',
    'reversed',
  ],
  check: (context) =>
    context.plugs
      .filter((plug) => partsMeeting(plug, ['ieee1394'], USB_JOBS).length > 0)
      .map((plug) => ({
        code: 'ieee1394-on-usb',
        severity: 'danger',
        ...atPlug(plug),
        data: plugOnConnector(plug),
        remedies: remediesFor(context, plug.ref),
      })),
};
