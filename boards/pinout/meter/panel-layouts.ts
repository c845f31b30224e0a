import type { Grid } from '../../document/grid';
import type { SignalId } from '../../signals/signals';
import { ACROSS_SHARE, ALONE, BLOCKS, PANEL_JOBS } from './panel-blocks';
import { cellKey, type Post } from './posts';

/** One block put on the header: which posts it takes, and what they then are. */
interface Put {
  readonly posts: readonly number[];
  readonly signals: readonly SignalId[];
  readonly job?: number;
  readonly odds: number;
  /** Cells behind the first that it takes too, as bits. */
  readonly ahead: number;
}

/** A signal for each post, and the odds of the whole. */
export interface PanelLayout {
  readonly signals: readonly SignalId[];
  readonly odds: number;
}

/** What all that may follow is worth, from a cell on. */
type From = (cell: number, ahead: number, used: number) => number;

/** How far a block reaches past the cell it begins in, in cells of two rows. */
const REACH = 6;
const AHEAD = 1 << (REACH + 1);
const USED = 1 << PANEL_JOBS;

/**
 * All panel headers on these posts, as one automaton: cells are walked from end to end, and in each the first
 * free post gets a block. A state is the cell, which of the next cells are taken, and which jobs are used.
 */
export class PanelLayouts {
  readonly #posts: readonly Post[];
  /** Index of the post in each cell of the walk; undefined where none stands. */
  readonly #walk: readonly (number | undefined)[];
  readonly #side: number;
  readonly #puts: readonly (readonly Put[])[];

  constructor(grid: Grid, posts: readonly Post[]) {
    this.#posts = posts;
    this.#side = Math.min(grid.rows, grid.cols);
    const long = Math.max(grid.rows, grid.cols);
    const at = new Map(posts.map(({ cell }, index) => [cellKey(cell), index]));
    this.#walk = Array.from({ length: this.#side * long }, (_, i) => {
      const along = Math.floor(i / this.#side);
      const across = i % this.#side;
      return at.get(cellKey(grid.cols >= grid.rows ? [across, along] : [along, across]));
    });
    this.#puts = this.#walk.map((_, cell) => this.#putsAt(cell));
  }

  /** Panels of three rows and more are not built from blocks: then there are none. */
  static fits({ rows, cols }: Grid): boolean {
    return Math.min(rows, cols) <= 2;
  }

  #putsAt(cell: number): readonly Put[] {
    const post = this.#walk[cell];
    if (post === undefined) return [];
    const puts: Put[] = ALONE.map(([signal, odds]) => ({
      posts: [post],
      signals: [signal],
      odds,
      ahead: 0,
    }));
    for (const { job, signals, odds } of BLOCKS) {
      const ways = [
        { step: this.#side, share: this.#side === 2 && signals.length === 2 ? 1 - ACROSS_SHARE : 1 },
      ];
      if (this.#side === 2 && signals.length === 2 && cell % 2 === 0)
        ways.push({ step: 1, share: ACROSS_SHARE });
      for (const { step, share } of ways) {
        const put = this.#block(cell, signals, step);
        if (put !== undefined) puts.push({ ...put, job, odds: odds * share });
      }
    }
    return puts;
  }

  /** A block that begins in a cell, or nothing where a post is lacking. */
  #block(cell: number, signals: readonly (SignalId | 'gap')[], step: number) {
    const posts: number[] = [];
    const here: SignalId[] = [];
    let ahead = 0;
    for (const [at, signal] of signals.entries()) {
      const post = this.#walk[cell + at * step];
      if (post === undefined) {
        if (signal !== 'gap' || cell + at * step >= this.#walk.length) return undefined;
        continue;
      }
      posts.push(post);
      here.push(signal === 'gap' ? 'no-connection' : signal);
      if (at > 0) ahead |= 1 << (at * step - 1);
    }
    return { posts, signals: here, ahead };
  }

  /** The cell, past those that are taken or empty; bit 0 of `ahead` is the cell itself. */
  #skip(cell: number, ahead: number): readonly [cell: number, ahead: number] {
    let at = cell;
    let taken = ahead;
    while (at < this.#walk.length && ((taken & 1) === 1 || this.#walk[at] === undefined)) {
      at += 1;
      taken >>= 1;
    }
    return [at, taken];
  }

  /**
   * The most usual layouts with their odds: all whose odds lie above a bar, which is lowered until there are
   * about as many as asked for, or no more.
   */
  usual(about: number): readonly PanelLayout[] {
    const most = this.weighed(() => 1, Math.max);
    let found: readonly PanelLayout[] = [];
    for (let bar = most.total / 2; bar > most.total * 1e-12; bar /= 2) {
      const more = this.#above(bar, most.from, about * 2);
      if (more === undefined) return found;
      found = more;
      if (found.length >= about) return found;
    }
    return found;
  }

  /** Every layout with odds above the bar, or undefined when there are more than the limit. */
  #above(bar: number, mostFrom: From, limit: number): readonly PanelLayout[] | undefined {
    const found: PanelLayout[] = [];
    const signals: SignalId[] = this.#posts.map(() => 'unknown');
    const walk = (from: number, before: number, used: number, odds: number): boolean => {
      if (odds * mostFrom(from, before, used) < bar) return true;
      const [cell, ahead] = this.#skip(from, before);
      if (cell >= this.#walk.length) {
        found.push({ signals: [...signals], odds });
        return found.length <= limit;
      }
      for (const put of this.#puts[cell] ?? []) {
        if (!fitsIn(put, ahead, used)) continue;
        for (const [at, post] of put.posts.entries()) signals[post] = put.signals[at] ?? 'unknown';
        if (!walk(cell + 1, (ahead >> 1) | put.ahead, usedWith(put, used), odds * put.odds)) return false;
      }
      return true;
    };
    return walk(0, 0, 0, 1) ? found : undefined;
  }

  /**
   * All layouts weighed by what each post's signal is worth, added up without listing them (or the greatest
   * of them, with `Math.max` in place of the sum).
   *
   * @param worth of a signal on a post, by index; scaled so that no product leaves the range of a number
   */
  weighed(worth: (post: number, signal: SignalId) => number, join: (a: number, b: number) => number = plus) {
    const known = new Float64Array(this.#walk.length * AHEAD * USED).fill(-1);
    const worths = this.#puts.map((puts) =>
      puts.map((put) =>
        put.posts.reduce(
          (product, post, at) => product * worth(post, put.signals[at] ?? 'unknown'),
          put.odds,
        ),
      ),
    );
    const from: From = (start, before, used) => {
      const [cell, ahead] = this.#skip(start, before);
      // A header without any job is no panel.
      if (cell >= this.#walk.length) return used === 0 ? 0 : 1;
      const key = (cell * AHEAD + ahead) * USED + used;
      const found = known[key] ?? -1;
      if (found >= 0) return found;
      let total = 0;
      (this.#puts[cell] ?? []).forEach((put, at) => {
        const own = worths[cell]?.[at] ?? 0;
        if (own > 0 && fitsIn(put, ahead, used))
          total = join(total, own * from(cell + 1, (ahead >> 1) | put.ahead, usedWith(put, used)));
      });
      known[key] = total;
      return total;
    };
    return { total: from(0, 0, 0), from, worths };
  }

  /** One layout drawn with the chance it has in a sum; undefined when nothing has any. */
  drawn(
    { from, worths }: ReturnType<PanelLayouts['weighed']>,
    random: () => number,
  ): PanelLayout | undefined {
    const signals: SignalId[] = this.#posts.map(() => 'unknown');
    let [cell, ahead] = this.#skip(0, 0);
    let used = 0;
    let odds = 1;
    while (cell < this.#walk.length) {
      let left = random() * from(cell, ahead, used);
      let chosen: Put | undefined;
      for (const [at, put] of (this.#puts[cell] ?? []).entries()) {
        if (!fitsIn(put, ahead, used)) continue;
        const own = worths[cell]?.[at] ?? 0;
        const share = own * from(cell + 1, (ahead >> 1) | put.ahead, usedWith(put, used));
        if (share <= 0) continue;
        chosen = put;
        left -= share;
        if (left < 0) break;
      }
      if (chosen === undefined) return undefined;
      for (const [at, post] of chosen.posts.entries()) signals[post] = chosen.signals[at] ?? 'unknown';
      odds *= chosen.odds;
      used = usedWith(chosen, used);
      [cell, ahead] = this.#skip(cell + 1, (ahead >> 1) | chosen.ahead);
    }
    return { signals, odds };
  }
}

function fitsIn({ ahead: needs, job }: Put, ahead: number, used: number): boolean {
  return (needs & (ahead >> 1)) === 0 && (job === undefined || ((used >> job) & 1) === 0);
}

function usedWith({ job }: Put, used: number): number {
  return job === undefined ? used : used | (1 << job);
}

function plus(a: number, b: number): number {
  return a + b;
}
