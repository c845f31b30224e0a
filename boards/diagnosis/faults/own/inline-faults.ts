import { grouped } from '../../../base/grouped';
import type { Build } from '../../../document/build';
import { unitsOf, unitWith } from '../../../document/lookup';
import { connectorName } from '../../../document/names';
import { type Joint, jointsOf } from '../../../fit/joints';
import type { SignalId } from '../../../signals/signals';
import { type Way, way } from '../fault';
import type { OwnFault, OwnFaults } from './share-out';

/** Something between the panel and a header: by what it is called, where it is plugged in, which pins it reaches. */
interface Between {
  readonly lead: string;
  readonly plug: string;
  readonly name: string;
  readonly joints: readonly Joint[];
}

/** What it may do to a pin that it reaches. Chances: common practice, no source. */
interface Deed {
  readonly id: string;
  readonly does: (pin: string) => string;
  readonly ways: readonly Way[];
}

const PULLS: Partial<Readonly<Record<SignalId, Deed>>> = {
  'power-switch-input': {
    id: 'pulls-power',
    does: (pin) => `pulls power low on ${pin}`,
    ways: [
      way(1, { power: { rest: 'held', pressed: 'held' } }),
      way(1, {}, { 'starts-by-itself': 0.5, 'starts-on-mains': 0.5, 'remote-dead': 0.2 }),
    ],
  },
  'reset-switch-input': {
    id: 'pulls-reset',
    does: (pin) => `pulls reset low on ${pin}`,
    ways: [
      way(1, { reset: { rest: 'held', pressed: 'held' } }, { 'resets-with-panel-board': 0.3, restarts: 0.2 }),
      way(2, {}, { 'resets-with-panel-board': 0.5, restarts: 0.4 }),
    ],
  },
};

const OPENS: Partial<Readonly<Record<SignalId, Deed>>> = {
  'power-led-feed': {
    id: 'opens-power-led',
    does: (pin) => `leaves the loop of the power LED open at ${pin}`,
    ways: [way(1, {}, { 'remote-light-missing': 0.6, 'power-light-dark': 0.6, 'power-light-flickers': 0.1 })],
  },
  'drive-led-feed': {
    id: 'opens-drive-led',
    does: (pin) => `leaves the loop of the drive LED open at ${pin}`,
    ways: [way(1, {}, { 'remote-light-missing': 0.5, 'drive-light-dark': 0.7 })],
  },
};

/**
 * What the boards between panel and headers that a build has may do: only to pins that a wire of theirs reaches.
 * One without a wire to reset never holds it.
 */
export function inlineFaults(build: Build): OwnFaults {
  const found = betweenIn(build);
  if (found.length === 0) return {};
  const turned = found.filter(({ joints }) => joints.some(isElectronic));
  return {
    'board-between': found.flatMap((each) => deedsOf(build, each, PULLS)),
    'led-loop': found.flatMap((each) => deedsOf(build, each, OPENS)),
    'electronic-switch':
      turned.length > 0
        ? turned.map(({ lead, plug, name }) => ({
            id: `${lead}/${plug}/switch-turned`,
            name: `The electronic switch of ${name} is the wrong way round.`,
            lead,
          }))
        : undefined,
  };
}

/** Behind a circuit, which may pull by itself. */
function isElectronic({ part }: Pick<Joint, 'part'>): boolean {
  return part?.kind === 'electronic-power-switch';
}

/** Cables without a part of their own that reach a pin of the panel, and switches behind a circuit. */
function betweenIn(build: Build): readonly Between[] {
  const isBoards = new Set(build.board.connectors.map(({ id }) => id));
  const joints = jointsOf(build).filter(
    ({ connector, pin, lead, part }) =>
      isBoards.has(connector.id) &&
      lead.setAside !== true &&
      (PULLS[pin?.signal ?? 'unknown'] ?? OPENS[pin?.signal ?? 'unknown']) !== undefined &&
      (part === undefined ? lead.parts.length === 0 : isElectronic({ part })),
  );
  return [...grouped(joints, ({ lead, plug }) => `${lead.id} ${plug.id}`).values()].flatMap((own) => {
    const [first] = own;
    if (first === undefined) return [];
    const { lead, plug } = first;
    return [{ lead: lead.id, plug: plug.id, name: nameOf(build, first), joints: own }];
  });
}

/** By the lead, and by the unit at its other end where there is one. */
function nameOf(build: Build, { lead }: Joint): string {
  if (unitsOf(build).length === 0) return lead.name;
  const seats = build.seats.filter((seat) => seat.lead === lead.id);
  const [unit] = seats.flatMap(({ connector }) => unitWith(build, connector) ?? []);
  return unit ? `${unit.name} by ${lead.name}` : lead.name;
}

function deedsOf(
  build: Build,
  { lead, plug, name, joints }: Between,
  deeds: Partial<Readonly<Record<SignalId, Deed>>>,
): readonly OwnFault[] {
  const reached = new Map(
    joints.flatMap(({ pin, connector }) => {
      const deed = deeds[pin?.signal ?? 'unknown'];
      const at = pin && `pin ${pin.pin} of ${connectorName(build, connector.id)}`;
      return deed && at ? [[deed.id, { deed, at }] as const] : [];
    }),
  );
  return [...reached.values()].map(({ deed, at }) => ({
    id: `${lead}/${plug}/${deed.id}`,
    name: `${name} ${deed.does(at)}.`,
    lead,
    ways: deed.ways,
  }));
}
