/** Numbers that come out in order, the least first. Which of two is less is asked of whoever puts them in. */
export class Heap {
  readonly #items: number[] = [];
  readonly #less: (one: number, other: number) => boolean;

  constructor(less: (one: number, other: number) => boolean) {
    this.#less = less;
  }

  push(item: number): void {
    const items = this.#items;
    let at = items.length;
    while (at > 0) {
      const above = (at - 1) >> 1;
      const parent = items[above] ?? item;
      if (!this.#less(item, parent)) break;
      items[at] = parent;
      at = above;
    }
    items[at] = item;
  }

  /** The least, which is then gone; undefined when there is none. */
  pop(): number | undefined {
    const items = this.#items;
    const least = items[0];
    const last = items.pop();
    if (last === undefined || items.length === 0) return least;
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      let child = items[below];
      if (child === undefined) break;
      const other = items[below + 1];
      if (other !== undefined && this.#less(other, child)) {
        below += 1;
        child = other;
      }
      if (!this.#less(child, last)) break;
      items[at] = child;
      at = below;
    }
    items[at] = last;
    return least;
  }
}
