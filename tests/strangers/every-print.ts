import type { Build } from '../../boards/document/build';
import { BENCH_PARTS } from '../../boards/handover/bench-sheet/options';
import { LABEL_SIZES } from '../../boards/handover/cables/label-options';
import type { Print } from '../../boards/handover/order';
import { PLAIN_OPTIONS } from '../../boards/handover/pinout/options';

type Prints = { readonly [Kind in Print['kind']]: Extract<Print, { kind: Kind }> };

/** One paper of every kind that can be made of a build; a kind that comes later does not compile without its own. */
export function everyPrint({ board: { connectors } }: Build): readonly Print[] {
  const view = { turn: 0, mirrored: false } as const;
  const prints: Prints = {
    'bench-sheet': { kind: 'bench-sheet', options: { paper: 'a4', ...view, parts: [...BENCH_PARTS] } },
    pinout: { kind: 'pinout', options: PLAIN_OPTIONS },
    'trouble-sheet': { kind: 'trouble-sheet', options: { paper: 'a4' } },
    labels: {
      kind: 'labels',
      options: {
        paper: 'a4',
        widthMm: LABEL_SIZES.widthMm.usual,
        heightMm: LABEL_SIZES.heightMm.usual,
        style: 'flag',
      },
    },
    header: { kind: 'header', options: { ...view, connector: connectors[0]?.id ?? '' } },
  };
  return Object.values(prints);
}
