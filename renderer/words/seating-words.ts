import { count } from '../../boards/document/problem/shown-value';
import type { Progress } from '../../boards/planner/progress';
import { nothingToSeatWords, planWords } from '../../boards/planner/words';
import type { FoundSeating, SeatingRun } from '../areas/wire/seating/seating-run';
import { counted } from './list-words';
import { countsWords } from './severity-words';

/** How far the search has come. */
export function progressWords(progress: Progress | null): string {
  if (progress === null) return 'Working out the best seating.';
  switch (progress.stage) {
    case 'places':
      return `Judging every place of each lead: ${progress.done} of ${progress.of} done.`;
    case 'search':
      return `Searching: ${count(progress.branches)} branches looked at.`;
    case 'remedies':
      return `Finding out why, and what would help: ${progress.done} of ${progress.of} done.`;
  }
}

/** What is proved of a plan, and what the checks would still say. */
export function foundWords({ build, plan, arrangements }: FoundSeating): string {
  const nothing = nothingToSeatWords(build);
  if (nothing !== undefined) return nothing;
  return `${planWords(plan, arrangements)} Before power, with it: ${countsWords(plan.findings)}.`;
}

/** Where the search has ended, and there is no plan for the wiring as it is. */
export function noPlanWords({ stage, found }: SeatingRun): string {
  if (stage === 'failed')
    return 'The search came to a stop through a fault of this program. Your wiring is as it was; seat by hand, or try again.';
  if (stage === 'stopped') return 'Stopped before there was an answer. Your wiring is as it was.';
  return found === null
    ? ''
    : 'Your wiring has changed since this was worked out, so it is not shown any more.';
}

export function differencesWords(differences: number): string {
  return differences === 0
    ? 'Your wiring is this arrangement.'
    : `${counted(differences, 'difference')} from your wiring.`;
}
