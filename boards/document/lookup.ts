import { byIdentity } from '../base/by-identity';
import type { BoardSheet } from './board-sheet';
import type { Build, Seat } from './build';
import type { Connector, Pin } from './connector';
import type { Cell } from './grid';
import type { Lead, Plug, Wire } from './lead';
import { splitEnd } from './lead';
import { gridIndex } from './numbering';
import type { Photo } from './photo';
import type { PlaceChoice } from './rating';
import type { ChosenRoute } from './route';
import type { Unit } from './unit';

/** A plug of a build: lead id and plug id. */
export interface PlugRef {
  readonly lead: string;
  readonly plug: string;
}

/** A pin of a board or a unit: connector id and pin label. */
export interface PinRef {
  readonly connector: string;
  readonly pin: string;
}

type Named = { readonly id: string };
const indexes = new WeakMap<readonly Named[], ReadonlyMap<string, Named>>();
/** A list as short as this is gone through faster than it is indexed. */
const SHORT = 8;

/** What has an id in a list that is never changed: found as fast in a long list as in a short one. */
function withId<T extends Named>(list: readonly T[], id: string): T | undefined {
  if (list.length <= SHORT) return list.find((each) => each.id === id);
  const known = indexes.get(list);
  const index = known ?? new Map(list.toReversed().map((each) => [each.id, each]));
  if (known === undefined) indexes.set(list, index);
  // An index is only ever made of the very list that it is kept for.
  return index.get(id) as T | undefined;
}

export function samePlug(a: PlugRef, b: PlugRef): boolean {
  return a.lead === b.lead && a.plug === b.plug;
}

/** Whether two seats are one place, whichever plugs are in them: the same cells, the same way round. */
export function sameSeat(one: Seat, other: Seat): boolean {
  return (
    one.connector === other.connector &&
    one.turn === other.turn &&
    one.at[0] === other.at[0] &&
    one.at[1] === other.at[1]
  );
}

/** The same for every reference to one plug, and for no two plugs: no id has a space in it. */
export function plugKey({ lead, plug }: PlugRef): string {
  return `${lead} ${plug}`;
}

/** Every lead of a build: those of the case first, then the extras. */
export function leadsOf(build: Build): readonly Lead[] {
  return build.extras.length === 0 ? build.case.leads : [...build.case.leads, ...build.extras];
}

export function leadOf(build: Build, id: string): Lead | undefined {
  return withId(build.case.leads, id) ?? withId(build.extras, id);
}

export function plugOf(build: Build, ref: PlugRef): Plug | undefined {
  return leadOf(build, ref.lead)?.plugs.find((plug) => plug.id === ref.plug);
}

export function connectorOf(board: BoardSheet, id: string): Connector | undefined {
  return withId(board.connectors, id);
}

const NO_UNITS: readonly Unit[] = [];

/** Everything beside the board that has connectors; the same list for every build that has none. */
export function unitsOf({ units }: Build): readonly Unit[] {
  return units ?? NO_UNITS;
}

const NO_CHOICES: readonly PlaceChoice[] = [];

/** Where drives and fans go because a person said so; the same list for every build with no such choice. */
export function choicesOf({ choices }: Build): readonly PlaceChoice[] {
  return choices ?? NO_CHOICES;
}

const NO_ROUTES: readonly ChosenRoute[] = [];

/** Chosen ways of cables; the same list for every build that has none. */
export function routesOf({ routes }: Build): readonly ChosenRoute[] {
  return routes ?? NO_ROUTES;
}

/** Every connector that a plug of the build can sit on: those of the board first. */
export function connectorsOf(build: Build): readonly Connector[] {
  const units = unitsOf(build);
  if (units.length === 0) return build.board.connectors;
  return [...build.board.connectors, ...units.flatMap(({ connectors }) => connectors)];
}

/** Connectors of units by their ids, with the unit that each is on. */
const socketsOf = byIdentity(
  (units: readonly Unit[]): ReadonlyMap<string, { readonly unit: Unit; readonly connector: Connector }> =>
    new Map(
      units.flatMap((unit) =>
        unit.connectors.map((connector) => [connector.id, { unit, connector }] as const),
      ),
    ),
);

/** A connector of the board or of a unit. */
export function anyConnectorOf(build: Build, id: string): Connector | undefined {
  return connectorOf(build.board, id) ?? socketsOf(unitsOf(build)).get(id)?.connector;
}

export function unitOf(build: Build, id: string): Unit | undefined {
  return withId(unitsOf(build), id);
}

/** The unit that a connector belongs to; undefined for one of the board. */
export function unitWith(build: Build, connector: string): Unit | undefined {
  return socketsOf(unitsOf(build)).get(connector)?.unit;
}

export function photoOf(board: BoardSheet, id: string): Photo | undefined {
  return board.photos?.find((photo) => photo.id === id);
}

export function seatOf(build: Build, ref: PlugRef): Seat | undefined {
  return build.seats.find((seat) => samePlug(seat, ref));
}

/** What is known of a position. One that the sheet does not list is a pin whose signal is unknown. */
export function pinOf(connector: Pick<Connector, 'pins'>, label: string): Pin {
  return pinIndex(connector).get(label) ?? { pin: label };
}

/** The pin in a cell; undefined outside the grid or where the grid has no position. */
export function pinAt(connector: Pick<Connector, 'grid' | 'pins'>, cell: Cell): Pin | undefined {
  const label = gridIndex(connector.grid).labelAt(cell);
  return label === undefined ? undefined : pinOf(connector, label);
}

const pinIndexes = new WeakMap<Pick<Connector, 'pins'>, ReadonlyMap<string, Pin>>();

function pinIndex(connector: Pick<Connector, 'pins'>): ReadonlyMap<string, Pin> {
  const known = pinIndexes.get(connector);
  if (known) return known;
  const index = new Map(connector.pins.map((pin) => [pin.pin, pin]));
  pinIndexes.set(connector, index);
  return index;
}

/** The wires that end in a hole of a plug, with the end that lies away from it. */
export function wiresAtHole(
  lead: Lead,
  plugId: string,
  hole: string,
): readonly { readonly wire: Wire; readonly farEnd: string }[] {
  const end = `${plugId}.${hole}`;
  return lead.wires.flatMap((wire) => {
    if (wire.from === end) return [{ wire, farEnd: wire.to }];
    return wire.to === end ? [{ wire, farEnd: wire.from }] : [];
  });
}

/** The parts of a lead that a plug has a wire to, by their ids. */
export function partsOf(lead: Lead, plug: Pick<Plug, 'id'>): ReadonlySet<string> {
  const ids = new Set(lead.parts.map(({ id }) => id));
  const found = new Set<string>();
  for (const { from, to } of lead.wires) {
    const [one, other] = [splitEnd(from).owner, splitEnd(to).owner];
    if (one === plug.id && ids.has(other)) found.add(other);
    if (other === plug.id && ids.has(one)) found.add(one);
  }
  return found;
}

export type HoleState = 'contact' | 'empty' | 'blocked';

const holeStates = new WeakMap<Lead, ReadonlyMap<string, ReadonlySet<string>>>();

function contactsOf(lead: Lead, plugId: string): ReadonlySet<string> {
  let byPlug = holeStates.get(lead);
  if (!byPlug) {
    const collected = new Map<string, Set<string>>(lead.plugs.map((plug) => [plug.id, new Set()]));
    for (const wire of lead.wires) {
      for (const { owner, point } of [splitEnd(wire.from), splitEnd(wire.to)])
        collected.get(owner)?.add(point);
    }
    byPlug = collected;
    holeStates.set(lead, byPlug);
  }
  return byPlug.get(plugId) ?? new Set();
}

/** What a hole holds: a contact where a wire ends, nothing, or a stop. */
export function holeState(lead: Lead, plug: Plug, hole: string): HoleState {
  if (plug.blocked?.includes(hole)) return 'blocked';
  return contactsOf(lead, plug.id).has(hole) ? 'contact' : 'empty';
}
