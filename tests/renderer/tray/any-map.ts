import fc from 'fast-check';
import { SIDES } from '../../../boards/document/connector';
import type { Tray } from '../../../boards/document/tray';
import { Dice } from '../../boards/dice';

const NAMES = ['Column', 'Lower front', 'Beside the supply unit, where the sleeve is thick', 'A', 'Floor 12'];

/** A tray with places anywhere, close together as often as not, some beyond its edge. */
export function anyMap(): fc.Arbitrary<Tray> {
  return fc.nat().map((seed) => {
    const dice = new Dice(seed);
    const size = () => 120 + dice.below(400);
    const [widthMm, heightMm] = [size(), size()];
    const many = <T>(most: number, make: (at: number) => T) =>
      Array.from({ length: dice.below(most + 1) }, (_, at) => make(at));
    const at = () => ({ xMm: dice.below(widthMm + 40) - 20, yMm: dice.below(heightMm + 40) - 20 });
    const named = () => (dice.oneIn(3) ? {} : { name: dice.pick(NAMES) ?? '' });
    const area = (least: number, most: number) => ({
      ...at(),
      widthMm: least + dice.below(most),
      heightMm: least + dice.below(most),
    });
    const points = many(14, (n) => ({
      id: `point-${n}`,
      ...named(),
      kind: dice.pick(['tie', 'bend', 'end'] as const) ?? 'tie',
      ...at(),
    }));
    const openings = many(9, (n) => ({
      id: `opening-${n}`,
      ...named(),
      ...area(8, 60),
      ...(dice.oneIn(3) && { round: true as const }),
      edge: dice.pick(['grommet', 'rolled', 'bare'] as const) ?? 'bare',
    }));
    const bays = many(5, (n) => ({ id: `bay-${n}`, ...named(), ...area(20, 140) }));
    const sideOf = new Map(
      points.map(({ id }) => [id, dice.oneIn(2) ? ('front' as const) : ('back' as const)]),
    );
    const ends = [...points, ...openings, ...bays].map(({ id }) => id);
    const paths = many(24, (n) => n).flatMap((n): Tray['paths'] => {
      const [from, to] = [dice.pick(ends) ?? '', dice.pick(ends) ?? ''];
      const side = sideOf.get(from) ?? sideOf.get(to) ?? 'back';
      if (from === to || (sideOf.get(to) ?? side) !== side) return [];
      return [{ id: `path-${n}`, from, to, lengthMm: 10 + dice.below(300), side }];
    });
    return {
      widthMm,
      heightMm,
      points,
      openings,
      bays,
      ...(dice.oneIn(2) && { supply: { id: 'supply', ...area(80, 90) } }),
      ...(dice.oneIn(2) && { board: { ...at(), rear: dice.pick(SIDES) ?? 'left' } }),
      standoffs: many(9, (n) => ({ id: `standoff-${n}`, ...at() })),
      fans: many(5, (n) => ({
        id: `fan-${n}`,
        wall: dice.pick(['front', 'rear', 'top', 'bottom', 'side'] as const) ?? 'rear',
        ...(dice.oneIn(2) && { strutsFace: 'inward' as const }),
      })),
      paths,
    };
  });
}
