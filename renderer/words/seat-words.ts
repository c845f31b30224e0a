import { listed } from '../../boards/base/listed';
import type { Build, Seat } from '../../boards/document/build';
import { anyConnectorOf, leadOf, plugOf } from '../../boards/document/lookup';
import { connectorName } from '../../boards/document/names';
import { seenTurn } from '../../boards/document/seen-turn';
import type { Landing } from '../../boards/fit/fit';
import { landingsOf } from '../../boards/fit/landing';
import { signalOf } from '../../boards/signals/signals';

/** How many pins are still told one by one. */
const FEW_PINS = 6;

/** "PANEL, pins 6 and 8": where a seat lies, by the pins under the plug's contacts. */
export function seatWords(build: Build, seat: Seat): string {
  const name = connectorName(build, seat.connector);
  const pins = pinsUnder(build, seat);
  return pins === '' ? name : `${name}, ${pins}`;
}

/** "pins 6 and 8", "pins 1 to 10", "all pins"; empty when nothing is met. */
function pinsUnder(build: Build, seat: Seat): string {
  const labels = contactsOf(build, seat).flatMap(({ pin }) => (pin && pin.missing !== true ? [pin.pin] : []));
  const first = labels[0];
  if (first === undefined) return '';
  if (labels.length === 1) return `pin\u00a0${first}`;
  if (labels.length <= FEW_PINS) return `pins\u00a0${listed(labels)}`;
  return `${labels.length}\u00a0pins from pin\u00a0${first}`;
}

/** "power switch and ground": what the contacts of a seat would meet. */
export function meetingWords(build: Build, seat: Seat): string {
  const names = contactsOf(build, seat).map((landing) => landingName(landing));
  return names.length > FEW_PINS ? `${names.slice(0, FEW_PINS).join(', ')} and more` : listed(names);
}

function landingName({ pin }: Landing): string {
  if (pin === undefined) return 'past the edge';
  if (pin.missing === true) return 'no pin';
  return signalOf(pin.signal ?? 'unknown').name;
}

/** The holes that matter: those with a contact, or all of them where none has one. */
function contactsOf(build: Build, seat: Seat): readonly Landing[] {
  const lead = leadOf(build, seat.lead);
  const plug = plugOf(build, seat);
  const connector = anyConnectorOf(build, seat.connector);
  if (!lead || !plug || !connector) return [];
  const landings = landingsOf({ seat, lead, plug, connector });
  const contacts = landings.filter((landing) => landing.state === 'contact');
  return contacts.length > 0 ? contacts : landings;
}

/** "turned a quarter right", or nothing when it lies straight. */
export function turnWords(turn: Seat['turn']): string {
  switch (turn) {
    case 0:
      return '';
    case 90:
      return 'turned a quarter to the right';
    case 180:
      return 'turned by half';
    case 270:
      return 'turned a quarter to the left';
  }
}

/** The same of a plug, as the board lies before the eyes. */
export function seatTurnWords(build: Build, seat: Seat): string {
  return turnWords(seenTurn(build, seat));
}
