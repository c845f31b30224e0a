/** Numbers that come out in order of two keys, the least first, and of equals the one that went in first. */
export class Heap {
  readonly #items: number[] = [];
  readonly #first: number[] = [];
  readonly #second: number[] = [];

  push(item: number, first: number, second: number): void {
    let at = this.#items.length;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!this.#comesBefore(item, first, second, above)) break;
      this.#move(above, at);
      at = above;
    }
    this.#put(at, item, first, second);
  }

  /** The least, which is then gone; undefined when there is none. */
  pop(): number | undefined {
    const least = this.#items[0];
    const item = this.#items.pop();
    const first = this.#first.pop();
    const second = this.#second.pop();
    const length = this.#items.length;
    if (item === undefined || first === undefined || second === undefined || length === 0) return least;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= length) break;
      if (child + 1 < length && this.#isBefore(child + 1, child)) child += 1;
      if (this.#comesBefore(item, first, second, child)) break;
      this.#move(child, at);
      at = child;
    }
    this.#put(at, item, first, second);
    return least;
  }

  #isBefore(one: number, other: number): boolean {
    return this.#comesBefore(this.#items[one] ?? 0, this.#first[one] ?? 0, this.#second[one] ?? 0, other);
  }

  #comesBefore(item: number, first: number, second: number, at: number): boolean {
    const otherFirst = this.#first[at] ?? 0;
    if (first !== otherFirst) return first < otherFirst;
    const otherSecond = this.#second[at] ?? 0;
    return second === otherSecond ? item < (this.#items[at] ?? 0) : second < otherSecond;
  }

  #move(from: number, to: number): void {
    this.#put(to, this.#items[from] ?? 0, this.#first[from] ?? 0, this.#second[from] ?? 0);
  }

  #put(at: number, item: number, first: number, second: number): void {
    this.#items[at] = item;
    this.#first[at] = first;
    this.#second[at] = second;
  }
}
