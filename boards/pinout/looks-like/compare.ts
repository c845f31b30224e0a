import type { Pin } from '../../document/connector';
import type { Cell } from '../../document/grid';
import { pinAt } from '../../document/lookup';
import { gridIndex } from '../../document/numbering';
import type { Layout } from './known-layout';
import { type Laying, laidPins } from './laid-over';
import { pinCode } from './pin-code';
import { type Verdict, verdictOn } from './verdict';

/** One place, and what each side says stands there. */
export interface PlaceCompared {
  /** In the rows and columns of the connector; outside its grid where only the layout reaches. */
  readonly cell: Cell;
  /** Undefined where the connector has no position. */
  readonly here: Pin | undefined;
  /** Undefined where the layout has no position. */
  readonly there: Pin | undefined;
  /** "only-here" and "only-there": the other has no position there at all. */
  readonly verdict: Verdict | 'only-here' | 'only-there';
}

/** Every place of a connector, in its counting order, beside a layout laid over it; then those past its edge. */
export function compared(here: Layout, there: Layout, laying: Laying): readonly PlaceCompared[] {
  const laid = new Map(laidPins(there, laying).map(({ cell, pin }) => [String(cell), pin]));
  const places = gridIndex(here.grid).positions.map(({ cell }): PlaceCompared => {
    const theirs = laid.get(String(cell));
    const mine = pinAt(here, cell);
    const verdict = theirs ? verdictOn(pinCode(mine), pinCode(theirs)) : 'only-here';
    return { cell, here: mine, there: theirs, verdict };
  });
  const past = laidPins(there, laying).flatMap(({ cell, pin }): readonly PlaceCompared[] =>
    pinAt(here, cell) === undefined ? [{ cell, here: undefined, there: pin, verdict: 'only-there' }] : [],
  );
  return [...places, ...past];
}
