import type { Mm } from '../../base/units';
import type { NoPassage } from '../fill/fill';
import type { Cable, Laying } from '../fill/laying';
import { kindOf, type Reach, type Route, reachOf } from '../search/reach';
import { connectorAt } from './laying-ids';

/** Something that was tried on a cable that does not reach, or not by its way, and the way that it then has. */
export type Remedy =
  /** It reaches as it is, by this way. */
  | { readonly kind: 'other-way'; readonly route: Route }
  /** Nothing is moved or bought, and less is left over at each end than was asked for. */
  | { readonly kind: 'less-slack'; readonly slackMm: Mm; readonly route: Route }
  | { readonly kind: 'extension'; readonly byMm: Mm; readonly route: Route }
  /** These openings let it through. */
  | {
      readonly kind: 'openings';
      readonly openings: readonly { readonly opening: string; readonly problem: NoPassage }[];
      readonly route: Route;
    }
  /** A like cable that may be bent to this inside radius. */
  | { readonly kind: 'tighter-bend'; readonly bendRadiusMm: Mm; readonly route: Route }
  /** What it ends at is moved to another bay. */
  | { readonly kind: 'other-bay'; readonly bay: string; readonly route: Route };

/**
 * What would help a cable that has no way of its own that it reaches by. Every remedy was tried by the same
 * search on the tray as it would then be, and comes with the way that was found; what did not help is not
 * there. Fewest changes first.
 *
 * @param taken bays where something sits
 */
export function remediesFor(
  laying: Laying,
  cable: Cable,
  taken: ReadonlySet<string> = new Set(),
): readonly Remedy[] {
  const reach = reachOf(laying, cable);
  if (reach.kind === 'reaches') return [{ kind: 'other-way', route: reach.route }];
  return [
    ...lessSlack(laying, cable, reach),
    ...extension(laying, cable, reach),
    ...otherOpenings(reach),
    ...tighterBend(laying, cable, reach),
    ...otherBay(laying, cable, taken),
  ];
}

function lessSlack(laying: Laying, cable: Cable, reach: Reach): readonly Remedy[] {
  if (reach.kind !== 'too-short') return [];
  const slackMm = Math.floor((cable.lengthMm - reach.shortest.totalMm) / 2);
  if (slackMm < 0) return [];
  const route = reaching(withKind(laying, cable, { slackMm }), cable);
  return route ? [{ kind: 'less-slack', slackMm, route }] : [];
}

function extension(laying: Laying, cable: Cable, reach: Reach): readonly Remedy[] {
  if (reach.kind !== 'too-short') return [];
  const byMm = Math.ceil(-reach.shortest.spareMm);
  const route = reaching(laying, { ...cable, lengthMm: cable.lengthMm + byMm });
  return route ? [{ kind: 'extension', byMm, route }] : [];
}

function otherOpenings(reach: Reach): readonly Remedy[] {
  if (reach.kind === 'reaches' || reach.ifOpen === undefined || reach.ifOpen.spareMm < 0) return [];
  const { ifOpen: route, barred } = reach;
  const openings = barred.filter(({ opening }) => route.openings.includes(opening));
  return [{ kind: 'openings', openings, route }];
}

function tighterBend(laying: Laying, cable: Cable, reach: Reach): readonly Remedy[] {
  const { behindMm } = laying;
  if (reach.kind === 'reaches' || behindMm === undefined) return [];
  if (!reach.barred.some(({ problem }) => problem.code === 'too-stiff')) return [];
  const bendRadiusMm = Math.floor(behindMm - kindOf(laying, cable).diameterMm);
  if (bendRadiusMm < 0) return [];
  const route = reaching(withKind(laying, cable, { bendRadiusMm }), cable);
  return route ? [{ kind: 'tighter-bend', bendRadiusMm, route }] : [];
}

/** The free bay that it reaches with least in sight. */
function otherBay(laying: Laying, cable: Cable, taken: ReadonlySet<string>): readonly Remedy[] {
  const bays = new Set(laying.bays.filter(({ id }) => connectorAt(id) === undefined).map(({ id }) => id));
  if (!bays.has(cable.to)) return [];
  const found = [...bays].flatMap((bay): readonly (Remedy & { kind: 'other-bay' })[] => {
    if (bay === cable.from || bay === cable.to || taken.has(bay)) return [];
    const route = reaching(laying, { ...cable, to: bay });
    return route ? [{ kind: 'other-bay', bay, route }] : [];
  });
  return found.toSorted((a, b) => a.route.visibleMm - b.route.visibleMm).slice(0, 1);
}

function reaching(laying: Laying, cable: Cable): Route | undefined {
  const reach = reachOf(laying, cable);
  return reach.kind === 'reaches' ? reach.route : undefined;
}

/** The tray with the kind of one cable made otherwise. */
function withKind(laying: Laying, { kind }: Cable, over: { slackMm?: Mm; bendRadiusMm?: Mm }): Laying {
  const cableKinds = laying.cableKinds.map((each) => (each.id === kind ? { ...each, ...over } : each));
  return { ...laying, cableKinds };
}
