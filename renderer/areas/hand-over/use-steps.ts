import { useMemo } from 'react';
import type { Build } from '../../../boards/document/build';
import { type BenchStep, benchStepsOf } from '../../../boards/handover/steps/bench-steps';
import { doneOf, nextToDo, tickOf } from '../../../boards/handover/steps/ticks';
import { doCommand } from '../../do-command';
import { useBuild, useSession, useWorkbench, type Workbench } from '../../workbench';

/** The work on the open build, and where it stands. */
export interface Steps {
  readonly build: Build;
  readonly steps: readonly BenchStep[];
  readonly done: ReadonlySet<string>;
  /** The step that is shown: the chosen one, otherwise the first that is not done, otherwise the last. */
  readonly shown: BenchStep;
}

export function useSteps(): Steps {
  const build = useBuild();
  const chosen = useSession((session) => session.step);
  const steps = useMemo(() => stepsOf(build), [build]);
  const shown = steps.find(({ id }) => id === chosen) ?? nextToDo(build, steps) ?? steps.at(-1);
  if (shown === undefined) throw new Error('No step at all: making safe is always one');
  return { build, steps, done: doneOf(build, steps), shown };
}

function stepsOf(build: Build): readonly BenchStep[] {
  const steps = benchStepsOf(build);
  // What blocks what is written so that there is none; the tests hold it to any build.
  if (!steps.ok) throw new Error(`Steps wait for each other: ${steps.problem.ids.join(', ')}`);
  return steps.value;
}

/** Ticks a step or takes its tick away. */
export function useTick(): (step: BenchStep, done: boolean) => void {
  const workbench = useWorkbench();
  return (step, done) => tick(workbench, step, done);
}

function tick(workbench: Workbench, step: BenchStep, done: boolean): void {
  // Told by its place, the step would be lost sight of as soon as another is the first to do.
  workbench.session.getState().showStep(step.id);
  doCommand(workbench, { name: 'tick-steps', args: { steps: [tickOf(step)], done } });
}

/** The step so many further on or back; undefined past either end. */
export function stepBeside(
  { steps, shown }: Pick<Steps, 'steps' | 'shown'>,
  by: 1 | -1,
): BenchStep | undefined {
  return steps[steps.indexOf(shown) + by];
}
