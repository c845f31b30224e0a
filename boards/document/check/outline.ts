import type { Outline } from '../outline';
import type { ProblemList } from '../problem/problem-list';
import { Once } from './once';

/** Mounting holes have ids of their own. Where they lie is not judged here: a manual can be imprecise. */
export function checkOutline({ holes = [] }: Outline, path: string, list: ProblemList): void {
  const ids = new Once('an id', list);
  holes.forEach(({ id }, at) => {
    ids.enter(id, `${path}.holes[${at}].id`);
  });
}
