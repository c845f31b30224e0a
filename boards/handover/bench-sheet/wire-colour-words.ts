import type { Wire } from '../../document/lead';

/** "red"; "white/blue" for a white wire with a blue stripe, as from-to lists write it. */
export function wireColour({ colour, stripe }: Pick<Wire, 'colour' | 'stripe'>): string {
  return stripe === undefined ? colour : `${colour}/${stripe}`;
}
