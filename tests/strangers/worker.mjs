import { parentPort, workerData } from 'node:worker_threads';

/** Runs mutants in a thread that can be ended from outside, whatever hangs in it. */
const { bundle, run, at } = workerData;
const { runMutants } = await import(bundle);
const report = await runMutants(run, (number) => Atomics.store(at, 0, number));
parentPort?.postMessage(report);
