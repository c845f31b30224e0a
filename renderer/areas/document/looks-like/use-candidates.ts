import { useMemo } from 'react';
import type { Build } from '../../../../boards/document/build';
import type { Connector } from '../../../../boards/document/connector';
import { compared, type PlaceCompared } from '../../../../boards/pinout/looks-like/compare';
import { knownLayouts } from '../../../../boards/pinout/looks-like/known-layout';
import { type Likeness, type LooksLike, looksLike } from '../../../../boards/pinout/looks-like/likeness';

/** A likeness with its places, under an id of its own for lists. */
export interface Candidate {
  readonly id: string;
  readonly likeness: Likeness;
  readonly places: readonly PlaceCompared[];
}

/** Nobody reads further down a list. */
const SHOWN = 24;

/** What a connector looks like: beside the library and the other connectors of its own board. */
export function useCandidates(
  { board }: Build,
  connector: Connector,
): { readonly result: LooksLike; readonly candidates: readonly Candidate[] } {
  return useMemo(() => {
    const neighbours = board.connectors
      .filter(({ id }) => id !== connector.id)
      .map((each) => ({ from: `${each.print || each.id} of this board`, connector: each }));
    const result = looksLike(connector, knownLayouts(neighbours));
    return {
      result,
      candidates: likenessesOf(result)
        .slice(0, SHOWN)
        .map((likeness, at) => ({
          id: String(at),
          likeness,
          places: compared(connector, likeness.layout.connector, likeness),
        })),
    };
  }, [board.connectors, connector]);
}

/** Those that are close, or the nearest where none is. */
export function likenessesOf(result: LooksLike): readonly Likeness[] {
  switch (result.outcome) {
    case 'nothing-known':
      return [];
    case 'none-close':
      return result.nearest;
    case 'found':
      return result.likenesses;
  }
}
