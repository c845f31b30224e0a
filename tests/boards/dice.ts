/**
 * Chance that can be repeated: the same seed throws the same numbers (mulberry32). One number of
 * fast-check decides about a whole thing, and what fits the situation can still be chosen from it.
 */
export class Dice {
  #state: number;

  constructor(seed: number) {
    this.#state = seed;
  }

  /** A whole number from 0 to below the limit. */
  below(limit: number): number {
    this.#state = (this.#state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), 1 | this.#state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % limit;
  }

  /** True once in so many throws. */
  oneIn(many: number): boolean {
    return this.below(many) === 0;
  }

  /** One of the items; undefined when there is none. */
  pick<T>(items: readonly T[]): T | undefined {
    return items[this.below(Math.max(1, items.length))];
  }
}
