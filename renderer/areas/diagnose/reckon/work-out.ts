import { type Dictionary, dictionaryOf } from '../../../../boards/diagnosis/dictionary';
import { faultsAsWritten } from '../../../../boards/diagnosis/faults/as-written';
import { type Reckoning, reckon } from '../../../../boards/diagnosis/log/reckoning';
import { trialsOf } from '../../../../boards/diagnosis/trials/trials';
import type { Build } from '../../../../boards/document/build';
import type { LogEntry } from '../../../../boards/document/trouble';

/** What is asked of whoever reckons. */
export interface ReckonTask {
  /** Tells one wiring from another; the build comes along where this wiring has not been sent before. */
  readonly wiring: number;
  readonly build?: Build;
  readonly log: readonly LogEntry[];
}

/** The reckoning for one wiring after the other; of the last one what each fault would show is kept. */
export function reckoner(): (task: ReckonTask) => Reckoning {
  let wiring = -1;
  let build: Build | null = null;
  let dictionary: Dictionary | null = null;
  return (task) => {
    if (task.wiring !== wiring || dictionary === null) {
      build = task.build ?? null;
      if (build === null) throw new Error(`No build came with the wiring ${task.wiring}`);
      dictionary = dictionaryOf(faultsAsWritten(build));
      wiring = task.wiring;
    }
    if (build === null) throw new Error('A dictionary without its build');
    return reckon(dictionary, task.log, trialsOf(build));
  };
}
