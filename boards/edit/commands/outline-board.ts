import { z } from 'zod';
import type { Outline } from '../../document/outline';
import { OutlineZ } from '../../document/outline';
import { defineCommand } from '../definition';
import { soundBuild } from '../sound';

/**
 * Sets the board's edge and its mounting holes: those of a form factor, or free ones. Holes and connectors
 * may then lie beyond the edge; that is told beside the plan and not refused. Refuses an id that is there twice.
 */
export const outlineBoard = defineCommand({
  name: 'outline-board',
  args: z.strictObject({ outline: OutlineZ }),
  label: ({ board }, { outline }) => whatChanges(board.outline, outline),
  apply: (build, { outline }) => soundBuild({ ...build, board: { ...build.board, outline } }),
});

function whatChanges(before: Outline, after: Outline): string {
  if ((before.rear ?? 'top') !== (after.rear ?? 'top')) return 'Say where the rear panel is';
  if (before.widthMm !== after.widthMm || before.depthMm !== after.depthMm)
    return 'Set the size of the board';
  if (before.formFactor !== after.formFactor) return 'Set the form factor';
  const more = (after.holes?.length ?? 0) - (before.holes?.length ?? 0);
  if (more === 0) return 'Change a mounting hole';
  return more > 0 ? 'Add a mounting hole' : 'Remove a mounting hole';
}
