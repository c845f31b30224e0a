import fc from 'fast-check';
import type { BoardSheet } from '../../../../boards/document/board-sheet';
import type { Connector } from '../../../../boards/document/connector';
import { gridIndex } from '../../../../boards/document/numbering';
import type { Photo } from '../../../../boards/document/photo';
import { pinsOfReading } from '../../../../boards/document/pin-reading';
import { arbitraryBoard, arbitraryName, arbitrarySeed, numberingFor, pinFor } from '../../arbitrary-build';
import { Dice } from '../../dice';

/** What somebody else might have written of the same connector: some pins otherwise, here and there more. */
function toldAnew(connector: Connector, dice: Dice, name: string): Connector {
  const { rows, cols } = connector.grid;
  const grid = dice.oneIn(4)
    ? { ...connector.grid, numbering: numberingFor(rows, cols, dice) }
    : connector.grid;
  const known = new Map(connector.pins.map((pin) => [pin.pin, pin]));
  const pins = gridIndex(grid).positions.flatMap(({ label }) => {
    if (dice.oneIn(3)) return [pinFor(label, dice, name)];
    const pin = known.get(label);
    return pin === undefined || dice.oneIn(6) ? [] : [pin];
  });
  const { readings = [], ...rest } = connector;
  const kept = readings.filter((reading) =>
    pinsOfReading(reading).every((pin) => gridIndex(grid).cellOf(pin) !== undefined),
  );
  return {
    ...rest,
    grid,
    pins,
    ...(kept.length > 0 && { readings: kept }),
    ...(dice.oneIn(4) && { print: name }),
    ...(dice.oneIn(4) && { place: { ...connector.place, xMm: dice.below(200) } }),
    ...(dice.oneIn(4) && { notes: `${name}, seen from below` }),
  };
}

/** A photo with only those points whose pins are still there. */
function soundIn(photo: Photo, { connectors }: Pick<BoardSheet, 'connectors'>): Photo {
  const stands = ({ connector, pin }: Photo['points'][number]) =>
    connectors.some(({ id, grid }) => id === connector && gridIndex(grid).cellOf(pin) !== undefined);
  return { ...photo, points: photo.points.filter(stands) };
}

/** A sheet and another of the same board: written anew, or of another board altogether. */
export const arbitraryPair: fc.Arbitrary<readonly [BoardSheet, BoardSheet]> = fc
  .record({ mine: arbitraryBoard, other: arbitraryBoard, seed: arbitrarySeed, name: arbitraryName })
  .map(({ mine, other, seed, name }) => {
    const dice = new Dice(seed);
    if (dice.oneIn(4)) return [mine, { ...other, id: 'other' }];
    const connectors = mine.connectors.filter(() => !dice.oneIn(6)).map((each) => toldAnew(each, dice, name));
    const further = dice.oneIn(3) ? other.connectors.slice(0, 1).map((each) => ({ ...each, id: 'new' })) : [];
    const theirs = { ...mine, id: 'copy', name: `${name} 2`, connectors: [...connectors, ...further] };
    return [
      mine,
      theirs.photos ? { ...theirs, photos: theirs.photos.map((photo) => soundIn(photo, theirs)) } : theirs,
    ];
  });
