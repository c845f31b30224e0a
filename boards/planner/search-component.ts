import type { Packed } from './packed';
import type { Component } from './reduce';

export interface ComponentAnswer {
  readonly kind: 'best' | 'gave-up' | 'impossible';
  /** By slot of the component; undefined where none was seen. */
  readonly chosen: readonly number[] | undefined;
  /** Packed: nothing costs less. */
  readonly bound: Float64Array;
  readonly steps: number;
}

/** Branch and bound over one component, deepest first, cheapest choice first. */
export function searchComponent(packed: Packed, component: Component, steps: number): ComponentAnswer {
  return new ComponentSearch(packed, component, steps).run();
}

const FREE = -1;

class ComponentSearch {
  private readonly width: number;
  private readonly count: number;
  /** How many taken choices clash with a choice. */
  private readonly blocked: Int32Array;
  /** By slot: the place of its taken choice in its list, or FREE. */
  private readonly taken: Int32Array;
  /** Per slot the place of its cheapest free choice, and of the next one; past the end where there is none. */
  private readonly first: Int32Array;
  private readonly second: Int32Array;
  /** Where a choice lies in the list of its slot of this component; FREE outside it. */
  private readonly slotHere: Int32Array;
  private readonly spent: Float64Array;
  private best: number[] | undefined;
  private readonly bestCost: Float64Array;
  private readonly openBound: Float64Array;
  private steps = 0;
  private stopped = false;

  constructor(
    private readonly packed: Packed,
    private readonly component: Component,
    private readonly limit: number,
  ) {
    this.width = packed.width;
    this.count = component.slots.length;
    this.blocked = new Int32Array(packed.slotOf.length);
    this.taken = new Int32Array(this.count).fill(FREE);
    this.first = new Int32Array(this.count);
    this.second = new Int32Array(this.count);
    this.slotHere = new Int32Array(packed.slotOf.length).fill(FREE);
    component.choices.forEach((list, slot) => {
      for (const choice of list) this.slotHere[choice] = slot;
    });
    this.spent = new Float64Array(this.width);
    this.bestCost = new Float64Array(this.width).fill(Number.POSITIVE_INFINITY);
    this.openBound = new Float64Array(this.width).fill(Number.POSITIVE_INFINITY);
  }

  run(): ComponentAnswer {
    this.descend();
    const { steps, best } = this;
    if (this.stopped) {
      const bound = this.less(this.openBound, this.bestCost) ? this.openBound : this.bestCost;
      return { kind: 'gave-up', chosen: best, bound, steps };
    }
    return { kind: best ? 'best' : 'impossible', chosen: best, bound: this.bestCost, steps };
  }

  /** Looks at everything below the present partial arrangement. */
  private descend(): void {
    this.steps += 1;
    if (!this.look()) return;
    const bound = this.boundHere();
    if (!this.less(bound, this.bestCost)) return;
    const slot = this.slotToBranch();
    if (slot === FREE) {
      this.keep(bound);
      return;
    }
    const list = this.component.choices[slot] ?? new Int32Array();
    for (let place = this.first[slot] ?? 0; place < list.length; place++) {
      const choice = list[place] ?? 0;
      if (this.blocked[choice] !== 0) continue;
      const below = this.boundWith(bound, slot, choice);
      if (!this.less(below, this.bestCost)) break;
      if (this.steps >= this.limit) {
        this.stopped = true;
        if (this.less(below, this.openBound)) this.openBound.set(below);
        break;
      }
      this.take(slot, place, choice);
      this.descend();
      this.giveBack(slot, choice);
      // What was looked at below has moved the marks of the slots.
      this.look();
    }
  }

  /** Finds the cheapest two free choices of every open slot. False where a slot has none left. */
  private look(): boolean {
    for (let slot = 0; slot < this.count; slot++) {
      if (this.taken[slot] !== FREE) continue;
      const list = this.component.choices[slot] ?? new Int32Array();
      const one = this.nextFree(list, this.floorOf(slot));
      if (one === list.length) return false;
      this.first[slot] = one;
      this.second[slot] = this.nextFree(list, one + 1);
    }
    return true;
  }

  private nextFree(list: Int32Array, from: number): number {
    let place = from;
    while (place < list.length && this.blocked[list[place] ?? 0] !== 0) place += 1;
    return place;
  }

  /** Slots that may change places are filled in one order only: each from where the last one stopped. */
  private floorOf(slot: number): number {
    const like = this.packed.likeOf[this.component.slots[slot] ?? 0] ?? FREE;
    if (like === FREE) return 0;
    for (let before = slot - 1; before >= 0; before--) {
      if (this.packed.likeOf[this.component.slots[before] ?? 0] !== like) continue;
      const place = this.taken[before] ?? FREE;
      if (place !== FREE) return place;
    }
    return 0;
  }

  /** What is spent, and the cheapest that is free in each open slot; more where two of those clash. */
  private boundHere(): Float64Array {
    const bound = this.spent.slice();
    for (let slot = 0; slot < this.count; slot++)
      if (this.taken[slot] === FREE) this.add(bound, this.choiceAt(slot, this.first[slot] ?? 0), 1);
    return bound;
  }

  private boundWith(bound: Float64Array, slot: number, choice: number): Float64Array {
    const below = bound.slice();
    this.add(below, this.choiceAt(slot, this.first[slot] ?? 0), -1);
    this.add(below, choice, 1);
    return below;
  }

  /** The open slot to decide next: of those whose cheapest choices clash the one that loses most by its second. */
  private slotToBranch(): number {
    let found = FREE;
    const most = new Float64Array(this.width);
    const loss = new Float64Array(this.width);
    for (let slot = 0; slot < this.count; slot++) {
      if (this.taken[slot] !== FREE || !this.isContested(slot)) continue;
      this.lossOf(slot, loss);
      if (found === FREE || this.less(most, loss)) {
        found = slot;
        most.set(loss);
      }
    }
    return found === FREE ? FREE : this.firstOfItsLike(found);
  }

  private isContested(slot: number): boolean {
    const choice = this.choiceAt(slot, this.first[slot] ?? 0);
    for (const other of this.packed.clashesOf[choice] ?? []) {
      const at = this.slotHere[other] ?? FREE;
      if (at !== FREE && this.taken[at] === FREE && this.choiceAt(at, this.first[at] ?? 0) === other)
        return true;
    }
    return false;
  }

  private lossOf(slot: number, loss: Float64Array): void {
    const list = this.component.choices[slot] ?? new Int32Array();
    const second = this.second[slot] ?? list.length;
    if (second === list.length) {
      loss.fill(Number.POSITIVE_INFINITY);
      return;
    }
    loss.fill(0);
    this.add(loss, list[second] ?? 0, 1);
    this.add(loss, this.choiceAt(slot, this.first[slot] ?? 0), -1);
  }

  private firstOfItsLike(slot: number): number {
    const { likeOf } = this.packed;
    const like = likeOf[this.component.slots[slot] ?? 0] ?? FREE;
    if (like === FREE) return slot;
    for (let at = 0; at < slot; at++)
      if (this.taken[at] === FREE && likeOf[this.component.slots[at] ?? 0] === like) return at;
    return slot;
  }

  private take(slot: number, place: number, choice: number): void {
    this.taken[slot] = place;
    this.add(this.spent, choice, 1);
    for (const other of this.packed.clashesOf[choice] ?? [])
      this.blocked[other] = (this.blocked[other] ?? 0) + 1;
  }

  private giveBack(slot: number, choice: number): void {
    this.taken[slot] = FREE;
    this.add(this.spent, choice, -1);
    for (const other of this.packed.clashesOf[choice] ?? [])
      this.blocked[other] = (this.blocked[other] ?? 0) - 1;
  }

  /** Everything open takes its cheapest choice, and none of those clash. */
  private keep(cost: Float64Array): void {
    this.bestCost.set(cost);
    this.best = Array.from(this.taken, (place, slot) =>
      this.choiceAt(slot, place === FREE ? (this.first[slot] ?? 0) : place),
    );
  }

  private choiceAt(slot: number, place: number): number {
    return this.component.choices[slot]?.[place] ?? 0;
  }

  private add(sum: Float64Array, choice: number, sign: 1 | -1): void {
    const { costs } = this.packed;
    for (let at = 0; at < this.width; at++)
      sum[at] = (sum[at] ?? 0) + sign * (costs[choice * this.width + at] ?? 0);
  }

  private less(one: Float64Array, other: Float64Array): boolean {
    for (let at = 0; at < this.width; at++) {
      const apart = (one[at] ?? 0) - (other[at] ?? 0);
      if (apart !== 0) return apart < 0;
    }
    return false;
  }
}
