import { z } from 'zod';
import { refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { connectorOf, photoOf } from '../../document/lookup';
import { connectorName, photoName } from '../../document/names';
import { gridIndex } from '../../document/numbering';
import { PhotoPointZ } from '../../document/photo';
import { IdZ } from '../../document/text';
import { defineCommand } from '../definition';
import { soundBuild } from '../sound';

/** Says where the pins of one connector are seen on a photo, in place of what was said of it before. */
export const pointPhoto = defineCommand({
  name: 'point-photo',
  args: z.strictObject({
    photo: IdZ,
    connector: IdZ,
    points: z.array(PhotoPointZ.omit({ connector: true })).max(LIMITS.pointsPerPhoto),
  }),
  label: (build, { photo, connector }) =>
    `Point at ${connectorName(build, connector)} on the photo ${photoName(build, photo)}`,
  apply: (build, { photo: id, connector, points }) => {
    const photo = photoOf(build.board, id);
    if (photo === undefined) return refuse({ code: 'unknown-photo', photo: id });
    const grid = connectorOf(build.board, connector)?.grid;
    if (grid === undefined) return refuse({ code: 'unknown-connector', connector });
    const stranger = points.find(({ pin }) => gridIndex(grid).cellOf(pin) === undefined);
    if (stranger !== undefined) return refuse({ code: 'unknown-pin', connector, pin: stranger.pin });
    const others = photo.points.filter((point) => point.connector !== connector);
    const all = [...others, ...points.map((point) => ({ connector, ...point }))];
    if (all.length > LIMITS.pointsPerPhoto)
      return refuse({ code: 'full', what: 'points', limit: LIMITS.pointsPerPhoto });
    const photos = build.board.photos?.map((each) => (each === photo ? { ...photo, points: all } : each));
    return soundBuild({ ...build, board: { ...build.board, ...(photos && { photos }) } });
  },
});
