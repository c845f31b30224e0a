import type { Build, Seat } from '../../document/build';
import { leadOf, type PinRef, type PlugRef, seatOf, unitWith } from '../../document/lookup';
import { pinsUnderSeat } from '../about';
import { pinsOf, plugText } from './names';

/** The right place of a plug: by its pins, or by turning where the pins are the same. */
export function moveText(build: Build, ref: PlugRef, to: Seat): string {
  const now = seatOf(build, ref);
  const pins = pinsUnderSeat(build, to);
  const there = pinsOf(build, pins);
  if (!now) return `Seat ${plugText(build, ref)} on ${there}.`;
  return samePins(pinsUnderSeat(build, now), pins)
    ? `Turn ${plugText(build, ref)} round on ${there}.`
    : `Move ${plugText(build, ref)} to ${there}.`;
}

export function clearText(build: Build, ref: PlugRef, other: PlugRef): string {
  return `Take ${plugText(build, other)} off first: it sits where ${plugText(build, ref)} belongs.`;
}

export function takeOffText(build: Build, ref: PlugRef): string {
  const cable = leadOf(build, ref.lead)?.parts.length === 0;
  return `Take ${plugText(build, ref)} off${cable ? '' : ': this board has no free place for it'}.`;
}

export function stuckText(build: Build, ref: PlugRef, part: string): string {
  return `Take ${plugText(build, ref)} off, and change or free the ${part}.`;
}

export function onePortText(part: string): string {
  return `Put every wire of the ${part} on the pins of one port of the board, each on its own.`;
}

export function takeWireOutText(hole: string): string {
  return `Unlatch the contact in hole\u00a0${hole} of the plug, and insulate its wire.`;
}

export function leaveOffText(build: Build, ref: PlugRef): string {
  return `Set ${plugText(build, ref)} aside, tied back so that it touches nothing.`;
}

export function moveContactText({ from, to }: { readonly from: string; readonly to: string }): string {
  return `Unlatch the contact in hole\u00a0${from} of the plug and push it into hole\u00a0${to}.`;
}

export function splitText(build: Build, ref: PlugRef): string {
  return `Take ${plugText(build, ref)} apart into single-hole plugs.`;
}

export function adapterText(): string {
  return 'Or use an adapter from the wide plug to two neighbouring pins.';
}

/** Of a place of the tray; "there": a standoff was seen in it. */
export function standoffEmptyText(there: boolean): string {
  return there
    ? 'Take the standoff out, and note that its place is empty.'
    : 'Look there, and note that the place is empty.';
}

export function fixedStandoffText(): string {
  return 'Put this board into another case.';
}

export function measureAgainText(): string {
  return 'Measure the standoff and the hole again.';
}

export function ownCableText(build: Build, ref: PlugRef): string {
  const seat = seatOf(build, ref);
  const unit = seat && unitWith(build, seat.connector);
  return unit?.kind === 'supply'
    ? `Take ${plugText(build, ref)} off ${unit.name}, and use a cable that came with that supply.`
    : `Take ${plugText(build, ref)} off, and use a cable that is made for this place.`;
}

export function turnBackText(): string {
  return 'Pull it off, and look at plug and pins. The slanted corners go to the slanted side.';
}

export function fourPinAdapterText(): string {
  return 'Use a cable without the +3.3\u00a0V wire, such as an adapter with crimped contacts from a four-pin plug.';
}

export function crimpedText(): string {
  return 'Look at the SATA end: take one with crimped contacts, or better a SATA plug of the supply itself.';
}

export function feedHubText(hub: string): string {
  return `Plug ${hub} into a fan header, or feed it from the supply, as it is made.`;
}

export function breakRingText(build: Build, ref: PlugRef, hub: string): string {
  return `Take ${plugText(build, ref)} off, and feed ${hub} from one place only.`;
}

export function fewerFansText(fromSupply: boolean): string {
  return fromSupply
    ? 'Take fans off the hub, or share them between two.'
    : 'Move fans to other headers, or to a hub that has its own lead to the supply unit.';
}

/** Of a header that the board watches; "there": a fan is on it, and tells no speed. */
export function reportSpeedText(there: boolean): string {
  return there
    ? 'Take a fan with a speed wire, or the outlet of the hub that hands the speed back.'
    : 'Put the fan of the processor’s cooler there, or what the manual names instead.';
}

export function readSheetText(): string {
  return 'Fill in its pins from the maker’s sheet. Until then use only the cables that came with this supply.';
}

function samePins(some: readonly PinRef[], others: readonly PinRef[]): boolean {
  const names = (pins: readonly PinRef[]) => pins.map(({ connector, pin }) => `${connector}.${pin}`).sort();
  return names(some).join() === names(others).join();
}
