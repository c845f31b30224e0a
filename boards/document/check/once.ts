import type { ProblemList } from '../problem/problem-list';
import { shownText } from '../problem/shown-value';

/** Notes where each name was first, and says so when it comes again. */
export class Once {
  readonly #first = new Map<string, string>();
  readonly #what: string;
  readonly #list: ProblemList;

  constructor(what: string, list: ProblemList) {
    this.#what = what;
    this.#list = list;
  }

  /** True for a name that was not there before. */
  enter(name: string, path: string): boolean {
    const first = this.#first.get(name);
    if (first === undefined) {
      this.#first.set(name, path);
      return true;
    }
    this.#list.add(() => ({
      path,
      expected: `${this.#what} that is not at ${first} already`,
      found: shownText(name),
    }));
    return false;
  }
}
