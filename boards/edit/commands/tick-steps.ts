import { z } from 'zod';
import { ok } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { StepIdZ } from '../../document/text';
import { defineCommand } from '../definition';

/** Ticks steps of the work off, or takes their ticks away. Which steps there are is no matter of the build. */
export const tickSteps = defineCommand({
  name: 'tick-steps',
  args: z.strictObject({ steps: z.array(StepIdZ).max(LIMITS.stepsDone), done: z.boolean() }),
  label: (_, { steps, done }) => {
    const what = steps.length === 1 ? 'a step' : 'all steps';
    return done ? `Tick ${what}` : `Untick ${what}`;
  },
  apply: (build, { steps, done }) => {
    const { done: before = [], ...plain } = build;
    const now = done ? [...new Set([...before, ...steps])] : before.filter((each) => !steps.includes(each));
    return ok(now.length === 0 ? plain : { ...plain, done: now });
  },
});
