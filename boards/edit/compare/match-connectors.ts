import type { Connector } from '../../document/connector';

/** A connector of one sheet and the one of the other that is the same thing on the board; null: there is none. */
export interface ConnectorPair {
  readonly mine: Connector | null;
  readonly theirs: Connector | null;
}

/** One sign by which two entries are the same connector: what both have to have in common. */
interface Sign {
  /** Null for a connector that the sign says nothing of. */
  readonly keyOf: (connector: Connector) => string | null;
  readonly alike?: (mine: Connector, theirs: Connector) => boolean;
}

const printOf = ({ print }: Connector) => (plain(print) === '' ? null : plain(print));
const sizeOf = ({ grid: { rows, cols } }: Connector) => `${rows} ${cols}`;

/** The surest first. */
const SIGNS: readonly Sign[] = [
  { keyOf: ({ id, print }) => `${id} ${print}` },
  { keyOf: (connector) => printOf(connector) && `${sizeOf(connector)} ${printOf(connector)}` },
  { keyOf: printOf },
  { keyOf: (connector) => `${sizeOf(connector)} ${connector.id}` },
  { keyOf: (connector) => `${sizeOf(connector)} ${connector.place.turn}`, alike: samePlace },
  { keyOf: ({ id }) => id },
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
  for (const sign of SIGNS) {
    const free = groups(
      mine.filter((one) => !partners.has(one)),
      sign,
    );
    const left = groups(
      theirs.filter((one) => !taken.has(one)),
      sign,
    );
    for (const [key, ours] of free) {
      for (const [one, other] of singlePairs(ours, left.get(key) ?? [], sign)) {
        partners.set(one, other);
        taken.add(other);
      }
    }
  }
  return [
    ...mine.map((one) => ({ mine: one, theirs: partners.get(one) ?? null })),
    ...theirs.filter((one) => !taken.has(one)).map((one) => ({ mine: null, theirs: one })),
  ];
}

function groups(
  connectors: readonly Connector[],
  { keyOf }: Sign,
): ReadonlyMap<string, readonly Connector[]> {
  const grouped = new Map<string, Connector[]>();
  for (const connector of connectors) {
    const key = keyOf(connector);
    if (key === null) continue;
    const group = grouped.get(key);
    if (group === undefined) grouped.set(key, [connector]);
    else group.push(connector);
  }
  return grouped;
}

/** Those of two groups that are alike and have no rival on either side. */
function singlePairs(
  ours: readonly Connector[],
  others: readonly Connector[],
  { alike }: Sign,
): readonly (readonly [Connector, Connector])[] {
  const [only, rival] = [ours[0], ours[1] ?? others[1]];
  if (alike === undefined) {
    return only === undefined || others[0] === undefined || rival !== undefined ? [] : [[only, others[0]]];
  }
  return ours.flatMap((one): readonly (readonly [Connector, Connector])[] => {
    const [other, rival] = others.filter((each) => alike(one, each));
    if (other === undefined || rival !== undefined) return [];
    return ours.some((each) => each !== one && alike(each, other)) ? [] : [[one, other]];
  });
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
