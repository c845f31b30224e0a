import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { photoOf } from '../../document/lookup';
import { photoName } from '../../document/names';
import { IdZ } from '../../document/text';
import { defineCommand } from '../definition';

/** Takes a photo out of the board sheet, with what was pointed at on it. */
export const removePhoto = defineCommand({
  name: 'remove-photo',
  args: z.strictObject({ photo: IdZ }),
  label: (build, { photo }) => `Remove the photo ${photoName(build, photo)}`,
  apply: (build, { photo: id }) => {
    if (photoOf(build.board, id) === undefined) return refuse({ code: 'unknown-photo', photo: id });
    const { photos = [], ...board } = build.board;
    const left = photos.filter((photo) => photo.id !== id);
    return ok({ ...build, board: left.length === 0 ? board : { ...board, photos: left } });
  },
});
