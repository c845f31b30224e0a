import { fork } from 'node:child_process';
import { once } from 'node:events';

/** A program that serves pages, in a process of its own. */
export interface Apart {
  readonly url: string;
  readonly end: () => Promise<void>;
}

/**
 * Begins one, which sends where to go and ends when it is let go of. Apart, as every program is: what the tests leave
 * to clear up is not to count, nor what it has learned from the run before.
 */
export async function begin(
  script: string,
  args: readonly string[],
  env: NodeJS.ProcessEnv = process.env,
): Promise<Apart> {
  const child = fork(script, args, { env });
  const gone = once(child, 'exit');
  const [url] = await Promise.race([
    once(child, 'message'),
    gone.then(([code]) => Promise.reject(new Error(`${script} ended with ${code}`))),
  ]);
  return {
    url,
    end: async () => {
      child.disconnect();
      await gone;
    },
  };
}
