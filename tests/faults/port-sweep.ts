import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { FAULTS, type FaultyDisk, faultyDisk } from '../electron/host/faulty-disk';
import { OPERATIONS } from './work/operations';
import { type BadDisk, type Swept, sweep } from './work/sweep';

/** A disk that says that a file is not there is believed: what it then holds is not to be told from nothing. */
const TRIED = FAULTS.filter((fault) => fault !== 'ENOENT');

/** The same as under the shim, in this process, through the port that the host reaches all files by. */
export async function portSweep(every: number, operations = OPERATIONS): Promise<Swept> {
  const below = mkdtempSync(join(tmpdir(), 'lw-port-'));
  let armed: FaultyDisk | null = null;
  const disk: BadDisk = {
    arm: (at, fault, lasting) => {
      const known = FAULTS.find((one) => one === fault) ?? 'EIO';
      armed = faultyDisk({ at: at === 0 ? Number.POSITIVE_INFINITY : at - 1, fault: known, lasting });
      return armed;
    },
    disarm: () => {
      const { log = [], failed = [] } = armed ?? {};
      armed = null;
      return { steps: log, wentWrong: failed.length > 0 };
    },
  };
  try {
    const takes = (number: number) => number % every === 0;
    return await sweep(disk, { below, operations, faults: TRIED, takes });
  } finally {
    rmSync(below, { recursive: true, force: true });
  }
}
