import { listed } from '../base/listed';
import type { Mm } from '../base/units';
import type { Build } from '../document/build';
import type { Side } from '../document/connector';
import { anyConnectorOf } from '../document/lookup';
import { connectorName, plugName } from '../document/names';
import { gridIndex } from '../document/numbering';
import type { FitRefusal } from './fit';

/** How many pins are still told one by one. */
const FEW_PINS = 4;

/** Why a plug cannot sit there, in a sentence. */
export function refusalWords(refusal: FitRefusal, build: Build): string {
  switch (refusal.code) {
    case 'family':
      return `A plug of the shape “${shape(refusal.plug)}” does not enter “${shape(refusal.connector)}”.`;
    case 'pitch':
      return `The holes are ${millimetres(refusal.plugMm)} apart, the pins ${millimetres(refusal.connectorMm)}.`;
    case 'blocked-hole':
      return `Hole\u00a0${refusal.hole} is blocked and would meet pin\u00a0${refusal.pin}.`;
    case 'no-hole':
      return `Pin\u00a0${refusal.pin} would meet the plug where it has no hole.`;
    case 'occupied':
      return occupiedWords(plugName(build, refusal.by), refusal.pins);
    case 'wall':
      return `The wall along ${sidePins(build, refusal)} is in the way.`;
    case 'guide':
      return `The plug’s rib has to face the guide along ${sidePins(build, refusal)}.`;
    case 'rib':
      return `The plug’s rib would meet the wall along ${sidePins(build, refusal)}, which has no slot.`;
    case 'obstructed':
      return `The part that hangs over would meet ${connectorName(build, refusal.by)}.`;
    case 'no-pin':
      return 'No pin would enter any hole.';
  }
}

/** What hangs over the connector's edge, in a sentence; empty where nothing does. */
export function overhangWords(holes: readonly string[]): string {
  if (holes.length === 0) return '';
  const verbs = holes.length === 1 ? 'hangs over the edge and meets' : 'hang over the edge and meet';
  return `${labelled('Hole', holes)} ${verbs} nothing.`;
}

function occupiedWords(other: string, pins: readonly string[]): string {
  if (pins.length === 0) return `${other} is in the way.`;
  if (pins.length > FEW_PINS) return `${other} already sits on ${pins.length}\u00a0of these pins.`;
  return `${other} already sits on ${labelled('pin', pins)}.`;
}

/** A side told by the pins along it: it stays true however the board lies in front of the person. */
function sidePins(build: Build, { connector: id, side }: { connector: string; side: Side }): string {
  const connector = anyConnectorOf(build, id);
  if (connector === undefined) return `the ${side}`;
  const { rows, cols } = connector.grid;
  const along = gridIndex(connector.grid)
    .positions.filter(({ cell: [row, col] }) => {
      if (side === 'top' || side === 'bottom') return row === (side === 'top' ? 0 : rows - 1);
      return col === (side === 'left' ? 0 : cols - 1);
    })
    .map(({ label }) => label);
  const first = along[0] ?? '';
  const last = along.at(-1) ?? '';
  return along.length > 2 ? `pins\u00a0${first} to\u00a0${last}` : labelled('pin', along);
}

function labelled(noun: string, labels: readonly string[]): string {
  return `${noun}${labels.length === 1 ? '' : 's'}\u00a0${listed(labels)}`;
}

function shape(family: string): string {
  return family.replaceAll('-', ' ');
}

function millimetres(mm: Mm): string {
  return `${mm.toFixed(2)}\u00a0mm`;
}
