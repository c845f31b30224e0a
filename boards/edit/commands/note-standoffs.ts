import { z } from 'zod';
import { ok, type Result, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { IdZ } from '../../document/text';
import { SEEN_AT_STANDOFF, type Standoff } from '../../document/tray';
import { defineCommand } from '../definition';
import type { Refusal } from '../refusal';
import { changeTray, twiceIn } from '../tray';
import { manyWords, trayPlaceName } from '../tray-words';

/**
 * Notes whether standoffs are in places of the tray; null where nobody has looked. Refuses to find a place
 * empty whose standoff cannot be taken out.
 */
export const noteStandoffs = defineCommand({
  name: 'note-standoffs',
  args: z.strictObject({
    seen: z
      .array(z.strictObject({ standoff: IdZ, seen: z.enum(SEEN_AT_STANDOFF).nullable() }))
      .min(1)
      .max(LIMITS.trayStandoffs),
  }),
  label: ({ case: { tray } }, { seen }) =>
    seen.length === 1 && seen[0]
      ? `Note what is in ${trayPlaceName(tray, seen[0].standoff)}`
      : `Note what is in ${manyWords(seen.length, 'standoff place', 'standoff places')}`,
  apply: (build, { seen }) =>
    changeTray(build, (tray) => {
      const twice = twiceIn(seen.map(({ standoff }) => standoff));
      if (twice !== undefined) return refuse({ code: 'named-twice', kind: 'place', id: twice });
      const looks = new Map(seen.map((each) => [each.standoff, each.seen]));
      const standoffs: Standoff[] = [];
      for (const standoff of tray.standoffs ?? []) {
        const look = looks.get(standoff.id);
        looks.delete(standoff.id);
        const next = look === undefined ? ok(standoff) : noted(standoff, look);
        if (!next.ok) return next;
        standoffs.push(next.value);
      }
      const [stranger] = looks.keys();
      return stranger === undefined
        ? ok({ ...tray, standoffs })
        : refuse({ code: 'unknown-place', place: stranger });
    }),
});

function noted(
  { seen: _, ...standoff }: Standoff,
  look: NonNullable<Standoff['seen']> | null,
): Result<Standoff, Refusal> {
  if (standoff.fixed && look === 'empty') return refuse({ code: 'fixed-standoff', place: standoff.id });
  return ok(look === null ? standoff : { ...standoff, seen: look });
}
