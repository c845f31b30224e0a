import { listed } from '../base/listed';
import type { Build } from '../document/build';
import { unitsOf } from '../document/lookup';
import { connectorName, leadName, plugName, unitName } from '../document/names';
import type { FieldProblem } from '../document/problem/problem';
import { count } from '../document/problem/shown-value';
import { refusalWords as fitWords } from '../fit/fit-words';
import type { Countable, Refusal } from './refusal';
import { trayPlaceName } from './tray-words';

/** Why a command was not carried out, and what would help, in one or two sentences. */
export function refusalWords(refusal: Refusal, build: Build): string {
  switch (refusal.code) {
    case 'invalid':
      return invalidWords(refusal.fields[0]);
    case 'unknown-lead':
      return `There is no lead “${refusal.lead}” in this build.`;
    case 'unknown-plug':
      return `${leadName(build, refusal.lead)} has no plug “${refusal.plug}”.`;
    case 'unknown-hole':
      return `${plugName(build, refusal)} has no hole\u00a0${refusal.hole}.`;
    case 'unknown-wire':
      return `${leadName(build, refusal.lead)} has no wire\u00a0${refusal.wire + 1}.`;
    case 'unknown-part':
      return `${leadName(build, refusal.lead)} has no part “${refusal.part}”.`;
    case 'no-colour':
      return `“${refusal.part}” of ${leadName(build, refusal.lead)} is no LED of one colour.`;
    case 'no-switch':
      return `“${refusal.part}” of ${leadName(build, refusal.lead)} is no switch, and only a switch can be stuck or broken.`;
    case 'no-fan':
      return `“${refusal.part}” of ${leadName(build, refusal.lead)} is no fan, and only a fan has a label with figures of one.`;
    case 'unknown-photo':
      return `There is no photo “${refusal.photo}” on this board.`;
    case 'unknown-connector':
      return `There is no connector “${refusal.connector}” on this board${unitsOf(build).length > 0 ? ' or on a unit' : ''}.`;
    case 'unknown-unit':
      return `There is no unit “${refusal.unit}” in this build.`;
    case 'no-drive':
      return `${unitName(build, refusal.unit)} is no drive, and only a drive has a line rate and a current at the start.`;
    case 'no-hub':
      return `${unitName(build, refusal.unit)} is no hub, and only a hub shares out what feeds it.`;
    case 'no-unit-there':
      return `No unit can sit at “${refusal.place}”. Choose a point, a bay or the supply of the tray, a place for drives on the board, or none.`;
    case 'unknown-pin':
      return `${connectorName(build, refusal.connector)} has no position\u00a0${refusal.pin}.`;
    case 'unknown-pins':
      return `${connectorName(build, refusal.connector)} has no ${pins(refusal.pins)}. Choose labels that it counts.`;
    case 'pins-twice':
      return `The list for ${connectorName(build, refusal.connector)} names ${pins(refusal.pins)} more than once. Keep one line for each pin.`;
    case 'unknown-reading':
      return `${connectorName(build, refusal.connector)} has no reading\u00a0${refusal.reading + 1}.`;
    case 'unknown-observation':
      return unknownObservationWords(refusal);
    case 'unknown-cause':
      return unknownCauseWords(refusal);
    case 'unknown-line':
      return `The log has no line\u00a0${refusal.line + 1}.`;
    case 'no-alternative':
      return `No other source says that of pin\u00a0${refusal.pin} of ${connectorName(build, refusal.connector)}.`;
    case 'no-mirror':
      return `What is known of ${pins(refusal.pins)} would come to lie where ${connectorName(build, refusal.connector)} has no position. Give the grid a position there, or clear them first.`;
    case 'reshape-loses':
      return reshapeWords(refusal, build);
    case 'plug-twice':
      return `${plugName(build, refusal)} is named twice. Say once what becomes of it.`;
    case 'run-twice':
      return `Two runs of ${leadName(build, refusal.lead)} lead to ${plugName(build, refusal)}. Keep one: a plug is the far end of one run at most.`;
    case 'run-ring':
      return `The run to ${plugName(build, refusal)} comes back to where the cable has been. Let it begin at another plug.`;
    case 'no-run':
      return `No run of a measured cable leads to ${plugName(build, refusal)}. Measure ${leadName(build, refusal.lead)} first.`;
    case 'no-way-chosen':
      return `No way is chosen for ${plugName(build, refusal)} yet. Choose one first.`;
    case 'not-seated':
      return `${plugName(build, refusal)} does not sit anywhere. Seat it first.`;
    case 'no-fit':
      return [
        `${plugName(build, refusal)} does not fit there on ${connectorName(build, refusal.connector)}.`,
        ...refusal.refusals.slice(0, 1).map((why) => fitWords(why, build)),
      ].join(' ');
    case 'id-taken':
      return `There is a ${refusal.kind} “${refusal.id}” already. Choose another id.`;
    case 'no-contact':
      return refusal.hole === undefined
        ? `${plugName(build, refusal)} has no contact in any hole.`
        : `There is no contact in hole\u00a0${refusal.hole} of ${plugName(build, refusal)}.`;
    case 'hole-blocked':
      return `Hole\u00a0${refusal.hole} of ${plugName(build, refusal)} is blocked. Choose an empty hole.`;
    case 'hole-taken':
      return `Hole\u00a0${refusal.hole} of ${plugName(build, refusal)} has a contact already. Choose an empty hole.`;
    case 'single-already':
      return `${plugName(build, refusal)} has a single hole and cannot be split.`;
    case 'shell':
      return `${plugName(build, refusal)} is made for one shape of connector and cannot be split into single plugs.`;
    case 'pins-lost':
      return `${connectorName(build, refusal.connector)} would lose what is known of ${pins(refusal.pins)}. Choose a numbering that has the same labels.`;
    case 'no-tray':
      return 'This case has no tray yet. Begin one first.';
    case 'tray-there':
      return 'This case has a tray already. Change it, or remove it first.';
    case 'unknown-place':
      return `There is no place “${refusal.place}” in the tray.`;
    case 'unknown-path':
      return `There is no path “${refusal.path}” in the tray.`;
    case 'other-kind':
      return `${placeWords(refusal.place, build)} is something else already. Remove it, and add the other.`;
    case 'named-twice':
      return `The ${refusal.kind} “${refusal.id}” is named twice. Say once what becomes of it.`;
    case 'in-a-wall':
      return `${placeWords(refusal.place, build)} is in a wall of the case, and not on the tray. Choose another wall for it.`;
    case 'fixed-standoff':
      return `${placeWords(refusal.place, build)} is pressed into the metal, so it cannot be empty. Say first that it can be taken out, if it can.`;
    case 'supply-there':
      return 'The tray has a place for the supply already. Move that one.';
    case 'no-path-end':
      return `No path leads to ${trayPlaceName(build.case.tray, refusal.place)}. Lead it to a point, an opening, a bay or the supply.`;
    case 'path-loop':
      return `A path from ${trayPlaceName(build.case.tray, refusal.place)} back to itself leads nowhere. Choose another end.`;
    case 'path-sides':
      return `Paths on the ${refusal.side} of the tray meet at ${trayPlaceName(build.case.tray, refusal.place)}. Only through an opening does a path come to the other side: put one in between, or change the side of all of them together.`;
    case 'full':
      return `${FULL[refusal.what]} ${count(refusal.limit)}\u00a0${refusal.what}.`;
  }
}

const TRAY_FULL = 'A tray can hold no more than';

const FULL: Readonly<Record<Countable, string>> = {
  leads: 'A list of leads can hold no more than',
  connectors: 'A board can hold no more than',
  sockets: 'A unit can hold no more than',
  units: 'A build can hold no more than',
  seats: 'A build can hold no more than',
  plugs: 'A lead can hold no more than',
  photos: 'A board can hold no more than',
  points: 'A photo can hold no more than',
  statements: 'Of one pin a sheet can hold no more than',
  readings: 'A connector can hold no more than',
  letters: 'Notes can hold no more than',
  lines: 'The log of a trouble can hold no more than',
  causes: 'A build can weigh no more than',
  'tray points': TRAY_FULL,
  openings: TRAY_FULL,
  bays: TRAY_FULL,
  'standoff places': TRAY_FULL,
  'fan places': TRAY_FULL,
  choices: 'A build can hold no more than',
  paths: TRAY_FULL,
  'chosen ways': 'A build can hold no more than',
};

function unknownObservationWords({
  observation,
  nearest,
}: Extract<Refusal, { code: 'unknown-observation' }>): string {
  const meant = nearest === undefined ? '' : ` Perhaps “${nearest}” is meant.`;
  return `There is no observation “${observation}”. Name one that can be asked about.${meant}`;
}

function unknownCauseWords({ cause, nearest }: Extract<Refusal, { code: 'unknown-cause' }>): string {
  const meant = nearest === undefined ? '' : ` Perhaps “${nearest}” is meant.`;
  return `There is no cause “${cause}”. Name one that a suspect can have.${meant}`;
}

/** The name of a place at the beginning of a sentence. */
function placeWords(place: string, build: Build): string {
  const name = trayPlaceName(build.case.tray, place);
  return name.charAt(0).toUpperCase() + name.slice(1);
}

function invalidWords(field: FieldProblem | undefined): string {
  if (field === undefined) return 'That cannot be kept as it is.';
  const where = field.path === '' ? 'That' : `“${field.path}”`;
  return `${where} cannot be kept: it has to be ${field.expected}, and is ${field.found}.`;
}

/** What a change of shape would cost: pins first, then plugs. */
function reshapeWords(
  { connector, pins: lost, plugs }: Extract<Refusal, { code: 'reshape-loses' }>,
  build: Build,
): string {
  const name = connectorName(build, connector);
  const off = listed(plugs.map((plug) => plugName(build, plug)));
  return [
    lost.length > 0 ? `${name} would lose what is known of ${pins(lost)}.` : '',
    plugs.length > 0 ? `${off} would no longer fit on ${name} and come off.` : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

function pins(labels: readonly string[]): string {
  const shown = labels.slice(0, 6);
  const more = labels.length - shown.length;
  return `${labels.length === 1 ? 'pin' : 'pins'}\u00a0${listed(more > 0 ? [...shown, `${more}\u00a0more`] : shown)}`;
}
