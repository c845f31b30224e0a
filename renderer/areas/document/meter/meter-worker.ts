import '../../../strict-zod';
import type { Connector } from '../../../../boards/document/connector';
import { type MeterTask, workOut } from './work-out';

/**
 * Works tasks out beside the window. What a message brings is a copy each time; grid and pins that are the
 * same as before are taken from before, since what they could be is worked out once for each.
 */
function answering(): (task: MeterTask) => ReturnType<typeof workOut> {
  let before: Connector | null = null;
  return ({ connector, skipped }) => {
    const { grid, pins } = connector;
    const same =
      before !== null && JSON.stringify([grid, pins]) === JSON.stringify([before.grid, before.pins]);
    const kept = same && before !== null ? { ...connector, grid: before.grid, pins: before.pins } : connector;
    before = kept;
    return workOut({ connector: kept, skipped });
  };
}

const answer = answering();
self.onmessage = ({ data }: MessageEvent<MeterTask>) => self.postMessage(answer(data));
