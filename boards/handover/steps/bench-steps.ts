import type { Result } from '../../base/result';
import type { Build, Seat } from '../../document/build';
import type { Fitted } from '../../document/fitted';
import { holeState, unitWith } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import { SOLDERED } from '../../document/power-job';
import { connectorBox, plugCentre } from '../../fit/geometry';
import { jointsOfPlug } from '../../fit/joints';
import { type SeatedPlug, seatedPlugs } from '../../fit/seated-plug';
import type { Job } from '../../signals/signal';
import { signalOf } from '../../signals/signals';
import { type MeterStep, meterStepsOf } from '../meter/meter-steps';
import { fittedOf } from './fitted-of';
import { inOrder, type Ring, type Task } from './order';
import { type KnownStandoffs, knownStandoffs } from './standoff-lines';

/** Work on the machine that has nothing to do with one plug. */
export type Chore =
  | 'make-safe'
  | 'io-plate'
  | 'standoffs'
  | 'fans'
  | 'processor'
  | 'memory'
  | 'm2-drive'
  | 'cooler'
  | 'feed-cpu-lead'
  | 'board-in'
  | 'supply-leads'
  | 'graphics-card'
  | 'look-over';

/** One thing to do at the bench; where it is about plugs that have steps of their own, with their seats. */
export type BenchStep = Task &
  (
    | { readonly kind: 'chore'; readonly chore: Chore; readonly seats?: readonly Seat[] }
    | { readonly kind: 'standoffs'; readonly known: KnownStandoffs }
    | { readonly kind: 'plug'; readonly seated: SeatedPlug }
    | { readonly kind: 'meter'; readonly step: MeterStep; readonly seats?: readonly Seat[] }
  );

/**
 * The work in an order in which nothing blocks what comes later, leaving out what this machine does not
 * have. What comes before what is common practice, no source: plate and standoffs before the board,
 * processor and any memory under it before the cooler, the lead of the CPU's supply through its opening
 * before the board hides it, inner pins before outer ones of a header, all leads before the card that covers
 * the headers. The leads of the supply come after the meter, which they would bridge: cables of a supply that is
 * in the build one plug after another, at the supply before the far end, and on a card once it is in. Where
 * nothing decides, plugs with many wires come before those with few.
 */
export function benchStepsOf(build: Build): Result<readonly BenchStep[], Ring> {
  const fitted = new Set<Fitted>(fittedOf(build));
  const all = seatedPlugs(build)
    .filter(({ connector }) => connector.family !== SOLDERED)
    .toSorted((a, b) => contactsIn(b) - contactsIn(a));
  const powers = all.filter((seated) => isOfSupply(build, seated));
  const plugs = all.filter((seated) => !powers.includes(seated));
  const meters = meterStepsOf(build);
  const ids = plugs.map(plugId);
  const before = [...ids, ...meters.map(meterId)];
  const chore = (id: Chore, ...after: readonly string[]): BenchStep => ({
    id,
    kind: 'chore',
    chore: id,
    after,
  });
  const has = (what: Fitted, step: BenchStep): readonly BenchStep[] => (fitted.has(what) ? [step] : []);
  return inOrder([
    chore('make-safe'),
    ...has('io-plate', chore('io-plate', 'make-safe')),
    ...has('standoffs', standoffs(build, chore('standoffs', 'make-safe'))),
    ...(build.case.tray?.fans?.length ? [chore('fans', 'make-safe')] : []),
    ...has('processor', chore('processor', 'make-safe')),
    ...has('memory', chore('memory', 'processor', 'make-safe')),
    ...has('m2-drive', chore('m2-drive', 'make-safe')),
    ...has('cooler', chore('cooler', 'processor', ...(fitted.has('cooler-over-memory') ? ['memory'] : []))),
    ...(hasCpuLead(build) ? [chore('feed-cpu-lead', 'make-safe')] : []),
    chore('board-in', 'make-safe', 'io-plate', 'standoffs', 'feed-cpu-lead'),
    ...plugs.map(
      (seated): BenchStep => ({
        id: plugId(seated),
        kind: 'plug',
        seated,
        after: [
          'board-in',
          ...cooledFirst(seated),
          ...plugs.filter((other) => isInner(build, other, seated)).map(plugId),
        ],
      }),
    ),
    ...meters.map(
      (step): BenchStep => ({ id: meterId(step), kind: 'meter', step, after: ids, ...seatsAt(build, step) }),
    ),
    ...(powers.length === 0 && (hasJob(build, 'main-power') || hasCpuLead(build))
      ? [chore('supply-leads', 'board-in', 'feed-cpu-lead', ...before)]
      : []),
    ...powers.map(
      (seated): BenchStep => ({
        id: plugId(seated),
        kind: 'plug',
        seated,
        after: ['board-in', 'feed-cpu-lead', ...before, ...beforePower(build, seated, powers)],
      }),
    ),
    ...has('graphics-card', chore('graphics-card', 'board-in', 'm2-drive', 'supply-leads', ...before)),
    {
      ...chore(
        'look-over',
        'board-in',
        'fans',
        'cooler',
        'memory',
        'supply-leads',
        'graphics-card',
        ...before,
        ...powers.map(plugId),
      ),
      seats: build.seats,
    },
  ]);
}

/** What sits on the header whose supply is measured: all of it lies beside the probes. */
function seatsAt({ seats }: Build, { kind, readings }: MeterStep): { readonly seats?: readonly Seat[] } {
  if (kind !== 'supply') return {};
  const headers = new Set(readings.flatMap(({ red, black }) => [red.connector, black.connector]));
  return { seats: seats.filter(({ connector }) => headers.has(connector)) };
}

/** With its places where the tray and the holes of the board are known; otherwise as a chore. */
function standoffs(build: Build, step: BenchStep): BenchStep {
  const known = knownStandoffs(build);
  return known === undefined ? step : { id: step.id, after: step.after, kind: 'standoffs', known };
}

/** A plug of a cable that hangs on a supply with its other end, or on the supply itself. */
function isOfSupply(build: Build, { lead }: SeatedPlug): boolean {
  return (
    lead.parts.length === 0 &&
    build.seats.some((seat) => seat.lead === lead.id && unitWith(build, seat.connector)?.kind === 'supply')
  );
}

/** The supply's own end goes in first, so that nobody pulls at a drive; a card has to be in before it is fed. */
function beforePower(build: Build, seated: SeatedPlug, powers: readonly SeatedPlug[]): readonly string[] {
  const unit = unitWith(build, seated.connector.id);
  if (unit?.kind === 'supply') return [];
  const near = powers.filter(
    ({ lead, connector }) => lead === seated.lead && unitWith(build, connector.id)?.kind === 'supply',
  );
  return [...near.map(plugId), ...(unit?.kind === 'card' ? ['graphics-card'] : [])];
}

function meterId({ kind, lead, part, readings }: MeterStep): string {
  return lead === undefined || part === undefined
    ? `meter ${kind} ${readings[0]?.red.connector ?? ''}`
    : `meter ${kind} ${lead} ${part}`;
}

function plugId({ lead, plug }: SeatedPlug): string {
  return `plug ${lead.id} ${plug.id}`;
}

function contactsIn({ lead, plug }: SeatedPlug): number {
  return gridIndex(plug.grid).positions.filter(({ label }) => holeState(lead, plug, label) === 'contact')
    .length;
}

/** A fan's plug goes on once what it cools by is there. */
function cooledFirst({ lead }: SeatedPlug): readonly string[] {
  return lead.parts.some(({ kind }) => kind === 'fan') ? ['cooler'] : [];
}

/** Whether the board has a place for the processor's own supply, whose lead comes from behind it. */
function hasCpuLead(build: Build): boolean {
  return hasJob(build, 'cpu-power') || build.board.connectors.some(({ family }) => family === 'cpu-power');
}

function hasJob({ board }: Build, job: Job): boolean {
  return board.connectors.some(({ pins }) =>
    pins.some(({ belongsTo, signal }) => belongsTo === job || (signal && signalOf(signal).job === job)),
  );
}

/** Whether one plug lies further from the edge of the board than another on the same header, by a row at least. */
function isInner(build: Build, inner: SeatedPlug, outer: SeatedPlug): boolean {
  if (inner === outer || inner.connector !== outer.connector) return false;
  const apart = depthOf(build, inner) - depthOf(build, outer);
  return apart > inner.connector.grid.pitchMm / 2;
}

/** How far the middle of a plug is from that edge of the board which its header is nearest to. */
function depthOf({ board: { outline } }: Build, { plug, connector, seat }: SeatedPlug): number {
  const box = connectorBox(connector);
  const { xMm, yMm } = plugCentre(plug, connector, seat);
  const sides = [
    { room: box.leftMm, depth: xMm },
    { room: outline.widthMm - box.rightMm, depth: outline.widthMm - xMm },
    { room: box.topMm, depth: yMm },
    { room: outline.depthMm - box.bottomMm, depth: outline.depthMm - yMm },
  ];
  return sides.reduce((nearest, side) => (side.room < nearest.room ? side : nearest)).depth;
}

/** Which wire goes to which pin, in the order of the plug's holes. */
export function wiresOf(seated: SeatedPlug) {
  return jointsOfPlug(seated).map(({ hole, wire, pin }) => ({ hole, wire, pin }));
}
