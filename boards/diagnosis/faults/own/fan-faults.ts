import type { Build } from '../../../document/build';
import type { Lead, Part } from '../../../document/lead';
import { leadOf, leadsOf, unitsOf } from '../../../document/lookup';
import { connectorName, leadName } from '../../../document/names';
import { contextOf } from '../../../findings/context';
import type { FindingOf } from '../../../findings/finding';
import { fanOverload } from '../../../findings/rules/fan-overload';
import { jointsOf } from '../../../fit/joints';
import { type BuildFans, fansOf, reportsSpeed } from '../../../routing/assign/build-fans';
import { hasSignal } from '../../../routing/assign/has-signal';
import { type Way, way } from '../fault';
import { hubFaults, OVERLOADED } from './hub-faults';
import type { OwnFault, OwnFaults } from './share-out';

/**
 * What may be wrong with the fans, hubs and splitters that a build has. How often what is noticed: common practice,
 * no source.
 */
export function fanFaults(build: Build): OwnFaults {
  const fans = leadsOf(build).flatMap((lead) => {
    const part = lead.parts.find(({ kind }) => kind === 'fan');
    return part && lead.setAside !== true ? [{ lead, part }] : [];
  });
  if (fans.length === 0) return {};
  const ofFans = fansOf(build);
  const overloads = fanOverload.check(contextOf(build));
  const splitters = [...splittersOf(build), ...overloads.flatMap((each) => overloaded(build, each))];
  // A build with units tells what lies between its fans and the board; without, it may only not say so.
  const isTold = unitsOf(build).length > 0;
  return {
    'fan-worn': fans.map(({ lead, part }) => ({
      id: `${lead.id}/${part.id}/worn`,
      name: `${lead.name} is worn or blocked.`,
      lead: lead.id,
      ways: isHeard(ofFans, lead.id) ? WORN_HEARD : WORN,
    })),
    'fan-wire-open': fans.flatMap((fan) => wireOpen(ofFans, fan)),
    'fan-elsewhere': elsewhere(build, ofFans),
    'fan-hub': hubFaults(build, ofFans, overloads) ?? (isTold ? [] : undefined),
    'fan-splitter': splitters.length > 0 || isTold ? splitters : undefined,
  };
}

const STANDS = { 'fan-stands': 0.7, 'fan-twitch': 0.4, 'fan-error': 0.3, 'fan-speed-zero': 0.2 };
const WORN: readonly Way[] = [way(1, {}, { ...STANDS, 'fan-speed-wrong': 0.3 })];
const WORN_HEARD: readonly Way[] = [
  way(1, {}, { ...STANDS, 'fan-speed-wrong': 0.3 }),
  way(2, { processorFan: 'not-seen' }, { 'fan-stands': 0.5 }),
];

const UNHEARD: readonly Way[] = [way(1, { processorFan: 'not-seen' }, { 'fan-speed-zero': 0.6 })];
const NO_SPEED: readonly Way[] = [
  way(1, {}, { 'fan-speed-zero': 0.75, 'fan-full-speed': 0.3, 'fan-error': 0.2 }),
];

/** Whether the board hears of this fan at the header that it watches. */
function isHeard(ofFans: BuildFans, fan: string): boolean {
  const header = ofFans.now.get(fan)?.end;
  const watched = ofFans.headers.some(({ id, watched: is }) => id === header && is === true);
  return watched && reportsSpeed(ofFans, fan);
}

interface OneFan {
  readonly lead: Lead;
  readonly part: Part;
}

/** Only of a fan that has a speed wire, and on whose header somebody hears it. */
function wireOpen(ofFans: BuildFans, { lead, part }: OneFan): readonly OwnFault[] {
  if (!reportsSpeed(ofFans, lead.id)) return [];
  return [
    {
      id: `${lead.id}/${part.id}/speed-wire-open`,
      name: `The speed wire of ${lead.name} is open.`,
      lead: lead.id,
      ways: isHeard(ofFans, lead.id) ? UNHEARD : NO_SPEED,
    },
  ];
}

/** The fan of the processor beside the header that the board watches; there where no speed comes from that header. */
function elsewhere(build: Build, ofFans: BuildFans): readonly OwnFault[] | undefined {
  const watched = ofFans.headers.find((header) => header.watched === true);
  const cooler = ofFans.fans.find(({ cools }) => cools === 'processor');
  const plug = cooler && leadOf(build, cooler.id)?.plugs[0];
  if (!watched || !cooler || !plug) return undefined;
  const header = connectorName(build, watched.id);
  const isSilent = !ofFans.fans.some(({ id }) => isHeard(ofFans, id));
  const isSaid = build.board.connectors.some(
    ({ id, rating }) => id === watched.id && rating?.watched === true,
  );
  return [
    {
      id: `${cooler.id}/${plug.id}/not-watched`,
      name: `${leadName(build, cooler.id)} is not on ${header}, which the board watches.`,
      lead: cooler.id,
      isThere: isSilent && isSaid,
    },
  ];
}

/** Blocks from one header to several fans: whether they join two speed signals is in their wires. */
function splittersOf(build: Build): readonly OwnFault[] {
  const sockets = build.board.connectors.filter((each) => hasSignal(each, 'fan-supply'));
  const headers = new Set(sockets.map(({ id }) => id));
  const joints = jointsOf(build).filter(
    ({ lead, connector }) => lead.parts.length === 0 && lead.plugs.length > 2 && headers.has(connector.id),
  );
  const blocks = [...new Map(joints.map((joint) => [joint.lead.id, joint])).values()];
  return blocks.map(({ lead, plug, connector }): OwnFault => {
    const speeds = joints.filter((joint) => joint.lead === lead && joint.pin?.signal === 'fan-tach');
    const at = connectorName(build, connector.id);
    return speeds.length > 1
      ? {
          id: `${lead.id}/${plug.id}/speeds-joined`,
          name: `${lead.name} joins two speed signals on ${at}.`,
          lead: lead.id,
        }
      : {
          id: `${lead.id}/${plug.id}/overloaded`,
          name: `${lead.name} asks more of ${at} than it may carry.`,
          lead: lead.id,
          ways: OVERLOADED,
        };
  });
}

/** By the sum that the rule makes of what its fans take; where a label was not read that is no more than a doubt. */
function overloaded(build: Build, { data, severity }: FindingOf<'fan-overload'>): readonly OwnFault[] {
  if (data.hub !== undefined) return [];
  return [
    {
      id: `overloaded/${data.connector}`,
      name: `The fans on ${connectorName(build, data.connector)} ask more of it than it may carry.`,
      ways: OVERLOADED,
      isThere: severity !== 'doubt',
    },
  ];
}
