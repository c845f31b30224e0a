import { type MeterAnswer, type MeterTask, workOut } from './work-out';

/** What an identifier needs of a worker. */
export type WorkerLike = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

/** Works tasks out beside the window, one at a time; of those that wait only the newest counts. */
export interface Identifier {
  readonly ask: (task: MeterTask, onAnswer: (answer: MeterAnswer) => void) => void;
  /** Nothing that was asked is answered any more. */
  readonly stop: () => void;
}

interface Asked {
  readonly task: MeterTask;
  readonly onAnswer: (answer: MeterAnswer) => void;
}

/** Where no worker can be had the window does it itself, and stands still meanwhile. */
export function identifierOver(open: () => WorkerLike, inWindow = workOut): Identifier {
  let worker: WorkerLike | null = null;
  let asked: Asked | null = null;
  let waiting: Asked | null = null;

  const done = (answer: MeterAnswer) => {
    const [answered, next] = [asked, waiting];
    [asked, waiting] = [null, null];
    // An answer to what was overtaken tells nothing any more.
    if (next === null) answered?.onAnswer(answer);
    else ask(next.task, next.onAnswer);
  };
  const failed = () => {
    const left = waiting ?? asked;
    worker?.terminate();
    [worker, asked, waiting] = [null, null, null];
    if (left) left.onAnswer(inWindow(left.task));
  };
  const opened = (): WorkerLike => {
    const fresh = open();
    fresh.onmessage = ({ data }: MessageEvent<MeterAnswer>) => done(data);
    fresh.onerror = failed;
    return fresh;
  };
  const ask: Identifier['ask'] = (task, onAnswer) => {
    if (asked !== null) {
      waiting = { task, onAnswer };
      return;
    }
    asked = { task, onAnswer };
    try {
      worker ??= opened();
    } catch {
      failed();
      return;
    }
    worker.postMessage(task);
  };
  return {
    ask,
    stop: () => {
      if (asked === null) return;
      worker?.terminate();
      [worker, asked, waiting] = [null, null, null];
    },
  };
}
