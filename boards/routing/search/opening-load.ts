import type { Mm } from '../../base/units';
import type { Opening } from '../../document/tray';
import { FILL_ROUNDING, fillLimit, fillOf, roomFor } from '../fill/fill';

/** What lies in an opening, for cables that are put in from the thickest to the thinnest and taken out again. */
export class OpeningLoad {
  readonly #opening: Opening;
  readonly #diametersMm: Mm[] = [];
  readonly #fills: number[] = [];
  readonly #heldMm: readonly Mm[];

  /** @param heldMm what lies in it for good */
  constructor(opening: Opening, heldMm: readonly Mm[] = []) {
    this.#opening = opening;
    this.#heldMm = heldMm;
  }

  /** The same as asking `roomFor` with all of them: of those that are in, only two and the sum can matter. */
  hasRoom(diameterMm: Mm): boolean {
    if (this.#heldMm.length > 0)
      return roomFor(this.#opening, [...this.#heldMm, ...this.#diametersMm, diameterMm]);
    const [first] = this.#diametersMm;
    if (first === undefined) return roomFor(this.#opening, [diameterMm]);
    if (this.#diametersMm.length === 1) return roomFor(this.#opening, [first, diameterMm]);
    return (this.#fills.at(-1) ?? 0) + fillOf(this.#opening, [diameterMm]) <= fillLimit(3) + FILL_ROUNDING;
  }

  /** @throws RangeError on a cable that is thicker than one that is in */
  add(diameterMm: Mm): void {
    const last = this.#diametersMm.at(-1) ?? diameterMm;
    if (diameterMm > last) throw new RangeError(`Expected at most ${last} mm, got ${diameterMm} mm`);
    this.#diametersMm.push(diameterMm);
    this.#fills.push((this.#fills.at(-1) ?? 0) + fillOf(this.#opening, [diameterMm]));
  }

  /** Takes the last one out again. */
  remove(): void {
    this.#diametersMm.pop();
    this.#fills.pop();
  }
}
