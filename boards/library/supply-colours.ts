import type { WireColour } from '../document/lead';
import type { SignalId } from '../signals/signals';

/** What each wire of a supply is coloured: a table of wire colours in a weblog (read in secondary). */
const COLOURS: ReadonlyMap<SignalId, WireColour> = new Map([
  ['supply-3v3', 'orange'],
  ['supply-5v', 'red'],
  ['supply-12v', 'yellow'],
  ['ground', 'black'],
  ['ps-on', 'green'],
  ['power-ok', 'grey'],
  ['supply-5v-standby', 'violet'],
  ['supply-minus-12v', 'blue'],
  ['supply-minus-5v', 'white'],
  ['card-sense', 'black'],
  ['card-sense0', 'black'],
  ['card-sense1', 'black'],
]);

/** The colour of the wire that ends at a pin of this signal; undefined where a supply has no wire. */
export function supplyColour(signal: SignalId): WireColour | undefined {
  return COLOURS.get(signal);
}
