import type { Side } from '../../document/connector';
import { orientationOf, oriented } from '../../drawing/orientation';
import type { PinoutOptions } from './options';

type Lying = Pick<PinoutOptions, 'turn' | 'mirrored'>;

const TURNED = {
  0: '',
  90: 'turned a quarter clockwise',
  180: 'turned by half',
  270: 'turned a quarter against the clock',
} as const;

/** How the board lies on the page: "Seen from above", "Turned by half", "Mirrored, then turned by half". */
export function lyingWords({ turn, mirrored }: Lying): string {
  if (mirrored) return turn === 0 ? 'Mirrored' : `Mirrored, then ${TURNED[turn]}`;
  return turn === 0 ? 'Seen from above, as the sheet has it' : `Seen from above, ${TURNED[turn]}`;
}

/** What has to be minded about it. */
export function lyingAdvice(lying: Lying): string {
  const lies = `The top edge of the board lies ${TOWARDS[topEdgeOf(lying)]}.`;
  if (!lying.mirrored) return lies;
  return `${lies} A mirror image: on the board itself left and right are exchanged.`;
}

const TOWARDS: Readonly<Record<Side, string>> = {
  top: 'at the top',
  right: 'at the right',
  bottom: 'at the bottom',
  left: 'at the left',
};

/** The side of the page towards which the board's own top edge lies. */
export function topEdgeOf(lying: Lying): Side {
  const { x, y } = oriented(orientationOf(lying), { x: 0, y: -1 });
  if (y !== 0) return y < 0 ? 'top' : 'bottom';
  return x > 0 ? 'right' : 'left';
}
