import { z } from 'zod';
import { refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { PhotoZ } from '../../document/photo';
import { defineCommand } from '../definition';
import { soundBuild } from '../sound';

/** Puts a photo into the board sheet. Refuses an id that is taken, and more than a sheet can hold. */
export const addPhoto = defineCommand({
  name: 'add-photo',
  args: z.strictObject({ photo: PhotoZ }),
  label: (_, { photo }) => `Add the photo ${photo.title || photo.id}`,
  apply: (build, { photo }) => {
    const { photos = [] } = build.board;
    if (photos.some(({ id }) => id === photo.id))
      return refuse({ code: 'id-taken', kind: 'photo', id: photo.id });
    if (photos.length >= LIMITS.photos) return refuse({ code: 'full', what: 'photos', limit: LIMITS.photos });
    return soundBuild({ ...build, board: { ...build.board, photos: [...photos, photo] } });
  },
});
