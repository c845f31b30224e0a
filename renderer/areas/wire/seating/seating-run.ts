import type { Build } from '../../../../boards/document/build';
import type { Plan } from '../../../../boards/planner/plan';
import type { Progress } from '../../../../boards/planner/progress';
import { stillHolds } from '../../../../boards/planner/still-holds';
import type { Unserved } from '../../../../boards/planner/ways-out';
import type { SeatingAsk, SeatingTold } from './seating-messages';

/** A plan that was found, and for what. */
export interface FoundSeating extends SeatingAsk {
  readonly plan: Plan;
  readonly arrangements: bigint;
  /** Of the plugs that it leaves off those of which is known why, so far. */
  readonly unserved: readonly Unserved[];
}

/** How the search for the best seating stands. */
export interface SeatingRun {
  readonly stage: 'working' | 'done' | 'stopped' | 'failed';
  readonly progress: Progress | null;
  /** Stays while a new one is being worked out. */
  readonly found: FoundSeating | null;
}

export const NOT_YET: SeatingRun = { stage: 'working', progress: null, found: null };

export function startedAnew({ found }: SeatingRun): SeatingRun {
  return { stage: 'working', progress: null, found };
}

/** The run after the worker has said something about what it was asked. */
export function afterTold(run: SeatingRun, ask: SeatingAsk, told: SeatingTold): SeatingRun {
  switch (told.kind) {
    case 'progress':
      return { ...run, progress: told.progress };
    case 'plan':
      return { ...run, found: { ...ask, plan: told.plan, arrangements: told.arrangements, unserved: [] } };
    case 'unserved':
      return run.found
        ? { ...run, found: { ...run.found, unserved: [...run.found.unserved, told.unserved] } }
        : run;
    case 'done':
      return { ...run, stage: 'done', progress: null };
  }
}

/** What was found, where it is still true of the build as it is now. */
export function foundFor({ found }: SeatingRun, build: Build): FoundSeating | null {
  return found && stillHolds({ build: found.build, seats: found.plan.seats }, build) ? found : null;
}
