import type { CauseId } from '../../../boards/diagnosis/faults/causes';
import type { ObservationId } from '../../../boards/diagnosis/observations/observations';
import type { ResultId, Trial } from '../../../boards/diagnosis/trials/trial';
import { doCommand } from '../../do-command';
import type { Workbench } from '../../workbench';
import { today } from './today';

/** Answers a question; null takes the answer back. */
export function answer(workbench: Workbench, observation: ObservationId, said: 'yes' | 'no' | null): void {
  doCommand(workbench, { name: 'answer-question', args: { observation, answer: said, day: today() } });
}

/** Notes what came of a trial; then the next one is shown. */
export function noteResult(workbench: Workbench, trial: Trial, result: ResultId): void {
  const noted = doCommand(workbench, {
    name: 'note-trial',
    args: { trial: trial.id, result, day: today() },
  });
  if (noted) workbench.session.getState().showTrial(null);
}

export function noteRemark(workbench: Workbench, text: string): void {
  doCommand(workbench, { name: 'note-remark', args: { text, day: today() } });
}

export function dropLine(workbench: Workbench, line: number): void {
  doCommand(workbench, { name: 'drop-log-line', args: { line } });
}

/** Counts a cause as met so many times as often as is usual; null: as usual. It stays the one that is shown. */
export function weighCause(workbench: Workbench, cause: CauseId, factor: number | null): void {
  workbench.session.getState().showSuspect(cause);
  doCommand(workbench, { name: 'weigh-cause', args: { cause, factor } });
}

export function startOver(workbench: Workbench): void {
  workbench.session.getState().showTrial(null);
  workbench.session.getState().showSuspect(null);
  doCommand(workbench, { name: 'start-over', args: { day: today() } });
}
