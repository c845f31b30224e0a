import { parentPort, workerData } from 'node:worker_threads';

/** Reads damaged files in a thread that can be ended from outside, whatever hangs in it. */
const { bundle, name, run, at } = workerData;
const { [name]: read } = await import(bundle);
const report = await read(run, (number) => Atomics.store(at, 0, number));
parentPort?.postMessage(report);
