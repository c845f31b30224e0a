import type { Build } from '../../boards/document/build';
import { everythingOf, openedBuild } from '../boards/document/frozen-files';
import { cramped } from '../boards/library/demo-files';
import { plainPixels, pngOf } from '../boards/pinout/photo/picture-files';

const SIDE_PX = 16;

/**
 * A build that has everything: each field that there is (the frozen one of `golden`), and beside it the connectors,
 * leads, cables and units of a whole machine, so that every list and every drawing of the window has something in it.
 */
export function wholeBuild(): Build {
  const golden = openedBuild(everythingOf('build'));
  const { board, case: sheet, extras, units = [] } = golden;
  const photo = Buffer.from(pngOf(plainPixels(SIDE_PX, SIDE_PX))).toString('base64');
  const photos = board.photos?.map((each) => ({
    ...each,
    type: 'image/png' as const,
    widthPx: SIDE_PX,
    heightPx: SIDE_PX,
    data: photo,
  }));
  const taken = new Set([...board.connectors, ...sheet.leads, ...extras, ...units].map(({ id }) => id));
  const others = <T extends { readonly id: string }>(list: readonly T[] = []) =>
    list.filter(({ id }) => !taken.has(id));
  return openedBuild(
    JSON.stringify({
      ...golden,
      board: { ...board, photos, connectors: [...board.connectors, ...others(cramped.board.connectors)] },
      case: { ...sheet, leads: [...sheet.leads, ...others(cramped.case.leads)] },
      extras: [...extras, ...others(cramped.extras)],
      units: [...units, ...others(cramped.units)],
      seats: [
        ...golden.seats,
        ...cramped.seats.filter(({ lead, connector }) => !taken.has(lead) && !taken.has(connector)),
      ],
    }),
  );
}
