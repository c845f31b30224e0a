import { grown, rectRoundAll } from '../../../boards/drawing/geometry';
import { orientationOf } from '../../../boards/drawing/orientation';
import type { Viewed } from '../viewed';
import { boxOf, type TrayScene } from './tray-scene';

/** From both sides the tray covers the same rectangle: looking from behind moves nothing. */
const UPRIGHT = orientationOf({ turn: 0, mirrored: false });

/** The map as a view shows it: places, paths and connectors by their ids are what is brought into sight. */
export function viewedTray(build: string, scene: TrayScene): Viewed {
  return {
    of: build,
    orientation: UPRIGHT,
    bounds: scene.bounds,
    first: () => scene.bounds,
    around: (ids) =>
      rectRoundAll(
        ids
          .flatMap(
            (id) =>
              boxOf(scene, id) ??
              scene.board?.connectors.find(({ connector }) => connector === id)?.box ??
              (id === 'board' ? scene.board?.outline : undefined) ??
              [],
          )
          .map((box) => grown(box, 4)),
      ),
    brought: 'into sight',
  };
}
