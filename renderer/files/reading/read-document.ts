import { freezeDeep } from '../../../boards/base/freeze';
import { ok, type Result, refuse } from '../../../boards/base/result';
import type { Build } from '../../../boards/document/build';
import type { Document } from '../../../boards/document/document';
import { parseDocument } from '../../../boards/document/parse';
import type { OpenProblem } from '../../../boards/document/problem/problem';
import workerAddress from './reading-worker?worker&url';

/** Letters that are read in less time than a worker takes to start. */
const AT_ONCE = 256 * 1024;

/** As `parseDocument`, and the window answers meanwhile, however long the text is. */
export async function readDocument(text: string): Promise<Result<Document, OpenProblem>> {
  if (text.length <= AT_ONCE) return parseDocument(text);
  const read = await readElsewhere(text);
  // What is handed from one thread to another is a copy, and may be changed again.
  return read.ok ? ok(freezeDeep(read.value)) : read;
}

/** The same, of a text that has to be a build. */
export async function readBuild(text: string): Promise<Result<Build, OpenProblem>> {
  const read = await readDocument(text);
  if (!read.ok) return read;
  const { value } = read;
  return value.format === 'leadwright/build' ? ok(value) : refuse({ code: 'not-ours', found: value.format });
}

function readElsewhere(text: string): Promise<Result<Document, OpenProblem>> {
  const worker = new Worker(workerAddress, { type: 'module' });
  const read = new Promise<Result<Document, OpenProblem>>((resolve) => {
    worker.addEventListener('message', ({ data }) => resolve(data));
    // One that cannot be started is done without.
    worker.addEventListener('error', () => resolve(parseDocument(text)));
    worker.postMessage(text);
  });
  return read.finally(() => worker.terminate());
}
