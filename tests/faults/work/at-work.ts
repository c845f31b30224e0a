import { openSync, readFileSync } from 'node:fs';
import { DISK } from '../../../electron/host/file-system';
import { onFullDisk } from './on-full-disk';
import { OPERATIONS, operationOf } from './operations';
import { workWithoutPause } from './robot';
import { type BadDisk, sweep } from './sweep';

/**
 * A program of its own that works under the shim, with the real host on the real disk.
 *
 * at-work sweep <folder> <faults, by comma> <one case in so many>   prints what came of it
 * at-work full <folder> <bytes left free, by comma>                  on a disk that is really full
 * at-work robot <home> <data>                                       edits and saves without a pause, until it is killed
 * at-work prepare <operation> <home> <data>                         lays out what it finds there, and ends
 * at-work once <operation> <home> <data> <at> <kind> <lasting>      does one thing, and may be killed in it
 */
const [, , order = '', ...args] = process.argv;

/** Opening this, which is no file, tells the shim what is to go wrong next. */
function arm(at: number, kind: string, lasting: boolean): void {
  try {
    openSync(`/leadwright-faults/${at} ${kind} ${lasting ? 1 : 0}`, 'r');
  } catch {
    return;
  }
  throw new Error('The shim is not there');
}

const shim: BadDisk = {
  arm: (at, fault, lasting) => {
    arm(at, fault, lasting);
    return DISK;
  },
  disarm: () => {
    const log = readFileSync(process.env.LEADWRIGHT_FAULTS_LOG ?? '', 'utf8');
    arm(0, 'none', false);
    const steps = log.split('\n').flatMap((line) => line.split('\t')[1] ?? []);
    return { steps, wentWrong: log.includes('\twrong\n') };
  },
};

if (order === 'sweep') {
  const [below = '', faults = '', every = '1'] = args;
  const takes = (number: number) => number % Number(every) === 0;
  const swept = await sweep(shim, { below, operations: OPERATIONS, faults: faults.split(','), takes });
  process.stdout.write(JSON.stringify(swept));
} else if (order === 'full') {
  const [below = '', sizes = ''] = args;
  const failures: string[] = [];
  let full = 0;
  for (const size of sizes.split(',')) {
    const { wasFull, wrongs } = await onFullDisk(below, Number(size));
    if (wasFull) full++;
    failures.push(...wrongs);
  }
  process.stdout.write(JSON.stringify({ full, failures }));
} else if (order === 'robot') {
  const [home = '', data = ''] = args;
  await workWithoutPause({ home, data });
} else if (order === 'prepare') {
  const [name = '', home = '', data = ''] = args;
  await operationOf(name).prepare({ home, data });
} else {
  const [name = '', home = '', data = '', at = '0', kind = '', lasting = '0'] = args;
  arm(Number(at), kind, lasting === '1');
  const said = await operationOf(name).run({ home, data }, DISK);
  process.stdout.write(JSON.stringify({ said, steps: shim.disarm().steps }));
}
