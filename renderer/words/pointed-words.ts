import { capital } from '../../boards/base/capital';
import type { MachineState } from '../../boards/circuit/machine-state';
import { pinVolts } from '../../boards/circuit/readings/pin-volts';
import type { Build } from '../../boards/document/build';
import { connectorOf, leadOf, type PinRef, pinOf, plugOf, seatOf } from '../../boards/document/lookup';
import { connectorName, leadName } from '../../boards/document/names';
import { pinWords, sourceWords } from '../../boards/document/pin-words';
import { voltsExactText } from '../../boards/findings/words/numbers';
import type { Hovered } from '../store/session';
import { occupantWords } from './occupant-words';
import { colourWords, plugTitle, plugWords, shapeWords } from './plug-words';
import { seatWords } from './seat-words';
import { trayPartWords } from './tray-words';

/** What is under the pointer, in one line; of a pin also its level in a state of the machine. */
export function pointedWords(build: Build, hovered: Hovered, machine: MachineState): string | null {
  switch (hovered.kind) {
    case 'plug': {
      const lead = leadOf(build, hovered.plug.lead);
      const plug = plugOf(build, hovered.plug);
      const seat = seatOf(build, hovered.plug);
      if (!lead || !plug) return null;
      return `${plugTitle(lead, plug)}: ${plugWords(lead, plug)}${seat ? `, on ${seatWords(build, seat)}` : ''}`;
    }
    case 'wire': {
      const wire = leadOf(build, hovered.plug.lead)?.wires[hovered.wire];
      return wire ? `${capital(colourWords(wire))} wire of ${leadName(build, hovered.plug.lead)}` : null;
    }
    case 'pin': {
      const connector = connectorOf(build.board, hovered.pin.connector);
      if (!connector) return null;
      const pin = pinOf(connector, hovered.pin.pin);
      const occupant = occupantWords(build, hovered.pin);
      const source = pin.missing ? '' : `, ${sourceWords(pin)}`;
      return `${connectorName(build, connector.id)}, pin\u00a0${pin.pin}: ${pinWords(pin)}${source}${levelWords(build, hovered.pin, machine)}${
        occupant === '' ? '' : `. ${occupant}`
      }`;
    }
    case 'connector': {
      const connector = connectorOf(build.board, hovered.connector);
      return connector
        ? `${connectorName(build, connector.id)}: ${connector.title}, ${shapeWords(connector)}`
        : null;
    }
    case 'on-tray':
      return build.case.tray === undefined ? null : trayPartWords(build, build.case.tray, hovered.part);
  }
}

/** ", 3.3 V now": what a meter against ground would usually show. */
function levelWords(build: Build, pin: PinRef, machine: MachineState): string {
  const volts = pinVolts(build, pin, machine);
  return volts === undefined ? '' : `, ${voltsExactText(volts)} now`;
}
