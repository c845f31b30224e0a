import type { DriveRating } from '../../../../boards/document/rating';
import { USUAL_DRIVE } from '../../../../boards/routing/assign/build-drives';
import { doCommand } from '../../../do-command';
import { useWorkbench } from '../../../workbench';
import { Figure } from '../figure';
import type { SubjectOf } from './figure-entries';
import { LineRateChoice } from './line-rate-choice';

/** A drive by its label. */
export function DriveFigures({ unit, drive }: SubjectOf<'drive'>) {
  const workbench = useWorkbench();
  const put = (next: DriveRating | null) =>
    doCommand(workbench, { name: 'rate-unit', args: { unit, drive: next, hub: null } });
  const of: DriveRating = drive ?? { lineRateGbps: USUAL_DRIVE.lineRateGbps };
  const { fastestMBps, ...unmeasured } = of;
  const { startAmps, ...unread } = of;
  return (
    <>
      <LineRateChoice
        rate={drive?.lineRateGbps}
        onChoose={(rate) => put(rate === undefined ? null : { ...of, lineRateGbps: rate })}
      />
      <div className="route-pair">
        <Figure
          label="At best, MB/s"
          value={fastestMBps}
          most={100_000}
          unit="megabytes a second"
          onDone={(next) => put(next === undefined ? unmeasured : { ...of, fastestMBps: next })}
        />
        <Figure
          label="At the start, A"
          value={startAmps}
          onDone={(next) => put(next === undefined ? unread : { ...of, startAmps: next })}
        />
      </div>
    </>
  );
}
