import type { Build } from '../../document/build';
import { type Fitted, USUALLY_FITTED } from '../../document/fitted';
import { unitWith } from '../../document/lookup';

/** What a machine has: what the build says; where it says nothing what is usual, with the card that is fed in it. */
export function fittedOf(build: Build): readonly Fitted[] {
  if (build.fitted !== undefined) return build.fitted;
  const hasCard = build.seats.some(({ connector }) => unitWith(build, connector)?.kind === 'card');
  return hasCard ? [...USUALLY_FITTED, 'graphics-card'] : USUALLY_FITTED;
}
