import { useMemo } from 'react';
import type { Build } from '../../../../boards/document/build';
import type { Connector } from '../../../../boards/document/connector';
import { compared, type PlaceCompared } from '../../../../boards/pinout/looks-like/compare';
import { type KnownLayout, knownLayouts } from '../../../../boards/pinout/looks-like/known-layout';
import { type Likeness, type LooksLike, looksLike } from '../../../../boards/pinout/looks-like/likeness';

/** A likeness with its places, under an id of its own for lists. */
export interface Candidate {
  readonly id: string;
  readonly likeness: Likeness;
  readonly places: readonly PlaceCompared[];
}

/** Nobody reads further down a list. */
const SHOWN = 24;

/** What a connector looks like: beside the library, the other connectors of its board, and the person's own. */
export function useCandidates(
  { board }: Build,
  connector: Connector,
  own: readonly KnownLayout[],
): { readonly result: LooksLike; readonly candidates: readonly Candidate[] } {
  return useMemo(() => {
    const neighbours = board.connectors
      .filter(({ id }) => id !== connector.id)
      .map((each) => ({ from: `${each.print || each.id} of this board`, connector: each }));
    const result = looksLike(connector, knownLayouts([...neighbours, ...own]));
    return {
      result,
      candidates: likenessesOf(result)
        .slice(0, SHOWN)
        .map((likeness, at, all) => ({
          id: idOf(likeness, all.slice(0, at)),
          likeness,
          places: compared(connector, likeness.layout.connector, likeness),
        })),
    };
  }, [board.connectors, connector, own]);
}

/** The same for the same layout in the same place, wherever it stands in the list. */
function idOf(likeness: Likeness, before: readonly Likeness[]): string {
  const name = nameOf(likeness);
  const twins = before.filter((other) => nameOf(other) === name).length;
  return `${name} | ${twins}`;
}

function nameOf({ layout, orientation: { turn, mirrored }, offset }: Likeness): string {
  return [layout.from, layout.connector.title, turn, mirrored, ...offset].join(' | ');
}

/** Those that are close, or the nearest where none is. */
function likenessesOf(result: LooksLike): readonly Likeness[] {
  switch (result.outcome) {
    case 'nothing-known':
      return [];
    case 'none-close':
      return result.nearest;
    case 'found':
      return result.likenesses;
  }
}
