/** A row of throws to decide by, so that what fits the situation can be chosen and yet be shrunk by fast-check. */
export class Dice {
  readonly #throws: readonly number[];
  #next = 0;

  constructor(throws: readonly number[]) {
    if (throws.length === 0) throw new Error('Dice need at least one throw');
    this.#throws = throws;
  }

  /** A whole number from 0 to below the limit. */
  below(limit: number): number {
    const thrown = this.#throws[this.#next % this.#throws.length] ?? 0;
    this.#next += 1;
    return thrown % limit;
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
