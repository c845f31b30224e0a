import fc from 'fast-check';
import type { Opening, Tray } from '../../../boards/document/tray';
import type { Cable, CableKind, Laying } from '../../../boards/routing/fill/laying';
import { Dice } from '../dice';

const AREA = { xMm: 10, yMm: 10, widthMm: 40, heightMm: 20 };

function openingOf(id: string, dice: Dice): Opening {
  return {
    ...AREA,
    id,
    // From one that lets nearly nothing through to one with room for most of the cables.
    widthMm: 5 + dice.below(10),
    heightMm: 4 + dice.below(6),
    ...(dice.oneIn(3) && { round: true as const }),
    edge: dice.pick(['grommet', 'rolled', 'bare'] as const) ?? 'bare',
  };
}

function pathsOf(tray: Pick<Tray, 'points' | 'openings' | 'bays' | 'supply'>, dice: Dice): Tray['paths'] {
  const sides = ['front', 'back'] as const;
  // A point lies on one side; what else there is can be come to from both.
  const sideOf = new Map(tray.points.map(({ id }) => [id, dice.pick(sides) ?? 'back']));
  const places = [...tray.points, ...tray.openings, ...tray.bays, ...(tray.supply ? [tray.supply] : [])];
  const paths: Tray['paths'] = [];
  for (let count = 8 + dice.below(16); count > 0; count--) {
    const from = dice.pick(places)?.id ?? '';
    const to = dice.pick(places)?.id ?? '';
    const side = sideOf.get(from) ?? sideOf.get(to) ?? dice.pick(sides) ?? 'back';
    if (from === to || [from, to].some((end) => (sideOf.get(end) ?? side) !== side)) continue;
    paths.push({ id: `path-${count}`, from, to, lengthMm: 1 + dice.below(30), side });
  }
  return paths;
}

function cablesOf(tray: Pick<Tray, 'points' | 'bays' | 'supply'>, count: number, dice: Dice): Cable[] {
  const ends = [...tray.points, ...tray.bays, ...(tray.supply ? [tray.supply] : [])].map(({ id }) => id);
  return Array.from({ length: count }, (_, at) => {
    const from = dice.pick(ends) ?? '';
    const others = ends.filter((end) => end !== from);
    const kind = dice.oneIn(3) ? 'thick' : 'thin';
    return { id: `cable-${at}`, kind, from, to: dice.pick(others) ?? '', lengthMm: 8 + dice.below(52) };
  });
}

const KINDS: readonly CableKind[] = [
  { id: 'thin', diameterMm: 3, slackMm: 2 },
  { id: 'thick', diameterMm: 7, bendRadiusMm: 8, slackMm: 4 },
];

/** A small tray as a valid sheet has it, with islands, barred openings and cables that are too short. */
export function anyTray(cables: number): fc.Arbitrary<Laying> {
  return fc.nat().map((seed) => {
    const dice = new Dice(seed);
    const many = <T>(count: number, make: (at: number) => T) =>
      Array.from({ length: count }, (_, at) => make(at));
    const parts = {
      points: many(2 + dice.below(5), (at) => ({
        id: `point-${at}`,
        kind: 'tie' as const,
        xMm: at,
        yMm: at,
      })),
      openings: many(dice.below(4), (at) => openingOf(`opening-${at}`, dice)),
      bays: many(dice.below(3), (at) => ({ ...AREA, id: `bay-${at}` })),
      supply: { ...AREA, id: 'supply' },
    };
    return {
      widthMm: 400,
      heightMm: 420,
      ...(dice.oneIn(2) && { behindMm: 10 + dice.below(12) }),
      ...parts,
      paths: pathsOf(parts, dice),
      cableKinds: KINDS,
      cables: cablesOf(parts, cables, dice),
    };
  });
}
