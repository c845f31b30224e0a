import { type Alike, alikeIn } from './alike';
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

/**
 * Branch and bound over one component, deepest first, cheapest choice first.
 *
 * @param tell is told now and then how many branches have been looked at
 */
export function searchComponent(
  packed: Packed,
  component: Component,
  steps: number,
  tell: (steps: number) => void,
): ComponentAnswer {
  return new ComponentSearch(packed, component, steps, tell).run();
}

const FREE = -1;

/** Branches between two tellings: some hundredths of a second. */
const TELL_EVERY = 4096;

/** How many times its steps a search may take to come by its first arrangement. */
const FIRST_FACTOR = 4;

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
  private readonly alike: Alike;
  /** By clique: the look in which one of its choices was last counted on. */
  private readonly counted: Int32Array;
  private looks = 0;
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
    private readonly tell: (steps: number) => void,
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
    this.alike = alikeIn(packed, component.slots, component.choices);
    this.counted = new Int32Array(this.alike.cliqueCount);
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
    if (this.steps % TELL_EVERY === 0) this.tell(this.steps);
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
      if (this.isSpent()) {
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

  /** Out of steps, once there is something to show; without it the search goes on for a while. */
  private isSpent(): boolean {
    return this.steps >= (this.best === undefined ? FIRST_FACTOR * (this.limit + this.count) : this.limit);
  }

  /**
   * Finds the cheapest two free choices of every open slot. False where a slot has none left. Slots that may
   * change places are filled in one order only, each from where the one before stands, and no two count on
   * choices that exclude each other: together they count on their cheapest different ones.
   */
  private look(): boolean {
    this.looks += 1;
    for (let slot = 0; slot < this.count; slot++) {
      if (this.taken[slot] !== FREE) continue;
      const one = this.nextFree(slot, this.floorOf(slot));
      const list = this.component.choices[slot];
      if (list === undefined || one === list.length) return false;
      this.first[slot] = one;
      const clique = this.alike.cliques[slot]?.[one] ?? FREE;
      this.second[slot] = this.nextFree(slot, one + 1);
      if (clique !== FREE) this.counted[clique] = this.looks;
    }
    return true;
  }

  private floorOf(slot: number): number {
    const before = this.alike.before[slot] ?? FREE;
    if (before === FREE) return 0;
    const taken = this.taken[before] ?? FREE;
    return taken === FREE ? (this.first[before] ?? 0) : taken;
  }

  private nextFree(slot: number, from: number): number {
    const list = this.component.choices[slot] ?? new Int32Array();
    const cliques = this.alike.cliques[slot] ?? new Int32Array();
    let place = from;
    while (place < list.length) {
      const clique = cliques[place] ?? FREE;
      const isCounted = clique !== FREE && this.counted[clique] === this.looks;
      if (this.blocked[list[place] ?? 0] === 0 && !isCounted) break;
      place += 1;
    }
    return place;
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
