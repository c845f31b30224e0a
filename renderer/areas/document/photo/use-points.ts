import { useState } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import type { Photo } from '../../../../boards/document/photo';
import { type Lay, layOf } from '../../../../boards/pinout/photo/lay';
import type { LayProblem } from '../../../../boards/pinout/photo/lay-problem';
import type { PinPoint } from '../../../../boards/pinout/photo/pointed';
import { doCommand } from '../../../do-command';
import { useWorkbench } from '../../../workbench';

export interface Points {
  /** As they are shown: also while one is being moved. */
  readonly points: readonly PinPoint[];
  readonly lay: Lay | null;
  readonly problem: LayProblem | null;
  /** Shows points before they are kept: a drag, a key held down. */
  readonly preview: (points: readonly PinPoint[]) => void;
  /** Keeps what is previewed as one step for undo. */
  readonly keep: () => void;
  /** Keeps points at once. */
  readonly put: (points: readonly PinPoint[]) => void;
}

/** The points of one connector on a photo, and the grid they hold. */
export function usePoints(photo: Photo, { id, grid }: Connector): Points {
  const workbench = useWorkbench();
  const [moving, setMoving] = useState<readonly PinPoint[] | null>(null);
  const saved = photo.points.flatMap(({ connector, ...point }) => (connector === id ? [point] : []));
  const points = moving ?? saved;
  const result = layOf(grid, points, photo);
  const put = (next: readonly PinPoint[]) => {
    setMoving(null);
    doCommand(workbench, {
      name: 'point-photo',
      args: { photo: photo.id, connector: id, points: [...next] },
    });
  };
  return {
    points,
    lay: result.ok ? result.value : null,
    problem: result.ok ? null : result.problem,
    preview: setMoving,
    keep: () => moving && put(moving),
    put,
  };
}

/** The pins whose points may be off. */
export function doubtedPins({ lay }: Pick<Points, 'lay'>): ReadonlySet<string> {
  const doubt = lay?.doubt ?? null;
  if (doubt === null || doubt.kind === 'several') return new Set();
  return new Set(doubt.kind === 'one' ? [doubt.pin] : doubt.pins);
}
