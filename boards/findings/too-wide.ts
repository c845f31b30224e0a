import type { Connector, Pin } from '../document/connector';
import type { Cell } from '../document/grid';
import type { Part } from '../document/lead';
import { leadOf, type PlugRef, pinOf } from '../document/lookup';
import { gridIndex } from '../document/numbering';
import { couldSuit } from '../fit/match';
import { wireEndsAt } from '../fit/wire-ends';
import type { Terminal } from '../signals/part-kind';
import { partKindOf } from '../signals/part-kinds';
import { isLed } from '../signals/part-traits';
import type { CheckContext } from './context';

/** One wire of an LED in its plug. */
interface Contact {
  readonly hole: string;
  readonly cell: Cell;
  readonly part: Part;
  readonly terminal: Terminal;
}

/** An LED plug whose contacts are further apart than the two pins made for it. */
export interface TooWide {
  readonly ref: PlugRef;
  readonly part: Part;
  readonly contacts: readonly [Contact, Contact];
  readonly connector: Connector;
  readonly pins: readonly [string, string];
}

/** Whether a plug is an LED's with a gap between its contacts, while the board has two pins side by side for it. */
export function tooWideFor({ build }: CheckContext, ref: PlugRef): TooWide | undefined {
  const contacts = contactsOf({ build }, ref);
  const [first, second, third] = contacts;
  if (!first || !second || third || first.part !== second.part) return undefined;
  if (!isLed(partKindOf(first.part.kind)) || apart(first.cell, second.cell) < 2) return undefined;
  for (const connector of build.board.connectors) {
    const pins = neighbouringPins(connector, first, second);
    if (pins) return { ref, part: first.part, contacts: [first, second], connector, pins };
  }
  return undefined;
}

function contactsOf({ build }: Pick<CheckContext, 'build'>, ref: PlugRef): readonly Contact[] {
  const lead = leadOf(build, ref.lead);
  const plug = lead?.plugs.find(({ id }) => id === ref.plug);
  if (!lead || !plug) return [];
  return gridIndex(plug.grid).positions.flatMap(({ label, cell }) =>
    wireEndsAt(lead, plug, label).flatMap(({ part, terminal }) =>
      part && terminal ? [{ hole: label, cell, part, terminal }] : [],
    ),
  );
}

function neighbouringPins(
  connector: Connector,
  first: Contact,
  second: Contact,
): TooWide['pins'] | undefined {
  const standing = gridIndex(connector.grid)
    .positions.map(({ label, cell }) => ({ pin: pinOf(connector, label), cell }))
    .filter(({ pin }) => pin.missing !== true);
  for (const one of standing.filter(({ pin }) => madeFor(first, pin))) {
    const other = standing.find(({ pin, cell }) => madeFor(second, pin) && apart(one.cell, cell) === 1);
    if (other) return [one.pin.pin, other.pin.pin];
  }
  return undefined;
}

function madeFor({ part, terminal }: Contact, pin: Pin): boolean {
  return couldSuit(partKindOf(part.kind), { terminal, pin });
}

function apart([row, col]: Cell, [otherRow, otherCol]: Cell): number {
  return Math.abs(row - otherRow) + Math.abs(col - otherCol);
}
