import type { Connector } from '../../document/connector';

/** A connector of one sheet and the one of the other that is the same thing on the board; null: there is none. */
export interface ConnectorPair {
  readonly mine: Connector | null;
  readonly theirs: Connector | null;
}

type Likeness = (mine: Connector, theirs: Connector) => boolean;

/** What makes two entries the same connector, the surest sign first. */
const SIGNS: readonly Likeness[] = [
  (mine, theirs) => mine.id === theirs.id && mine.print === theirs.print,
  (mine, theirs) => samePrint(mine, theirs) && sameSize(mine, theirs),
  samePrint,
  (mine, theirs) => mine.id === theirs.id && sameSize(mine, theirs),
  (mine, theirs) => sameSize(mine, theirs) && samePlace(mine, theirs),
  (mine, theirs) => mine.id === theirs.id,
];

/**
 * Which connectors of two sheets are the same: by id and print, then by print, by id, by where they stand.
 * A sign only counts where it points to one connector on each side. Those of the first sheet come first,
 * in their order; each connector is in one pair.
 */
export function matchConnectors(
  mine: readonly Connector[],
  theirs: readonly Connector[],
): readonly ConnectorPair[] {
  const partners = new Map<Connector, Connector>();
  const taken = new Set<Connector>();
  for (const alike of SIGNS) {
    const free = mine.filter((one) => !partners.has(one));
    const left = theirs.filter((one) => !taken.has(one));
    for (const one of free) {
      const [partner, ...others] = left.filter((other) => alike(one, other));
      if (partner === undefined || others.length > 0 || taken.has(partner)) continue;
      if (free.some((rival) => rival !== one && alike(rival, partner))) continue;
      partners.set(one, partner);
      taken.add(partner);
    }
  }
  return [
    ...mine.map((one) => ({ mine: one, theirs: partners.get(one) ?? null })),
    ...theirs.filter((one) => !taken.has(one)).map((one) => ({ mine: null, theirs: one })),
  ];
}

function samePrint(mine: Connector, theirs: Connector): boolean {
  const print = plain(mine.print);
  return print !== '' && print === plain(theirs.print);
}

function plain(print: string): string {
  return print.trim().toLowerCase();
}

/** Whether both have as many rows and columns, so that their positions can be laid over each other. */
export function sameSize(mine: Connector, theirs: Connector): boolean {
  return mine.grid.rows === theirs.grid.rows && mine.grid.cols === theirs.grid.cols;
}

/** Two people who measure the same header on a board differ by a few millimetres. common practice, no source */
const NEAR_MM = 5;

function samePlace({ place: mine }: Connector, { place: theirs }: Connector): boolean {
  return mine.turn === theirs.turn && Math.hypot(mine.xMm - theirs.xMm, mine.yMm - theirs.yMm) <= NEAR_MM;
}
