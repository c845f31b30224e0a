import { z } from 'zod';
import { ok } from '../../base/result';
import { TrayZ } from '../../document/tray';
import { defineCommand } from '../definition';
import { changeTray } from '../tray';

const { widthMm, heightMm, behindMm } = TrayZ.shape;

/**
 * Says how large the tray is, and how much room is behind it; null where nobody has measured that. Places
 * stay where they are, also beyond the edge.
 */
export const sizeTray = defineCommand({
  name: 'size-tray',
  args: z.strictObject({ widthMm, heightMm, behindMm: behindMm.unwrap().nullable() }),
  label: ({ case: { tray } }, args) =>
    tray?.widthMm === args.widthMm && tray.heightMm === args.heightMm
      ? 'Say how much room is behind the tray'
      : 'Set the size of the tray',
  apply: (build, { behindMm: behind, ...size }) =>
    changeTray(build, ({ behindMm: _, ...tray }) =>
      ok({ ...tray, ...size, ...(behind !== null && { behindMm: behind }) }),
    ),
});
