import { byIdentity } from '../../base/by-identity';
import { seededRandom } from '../../base/random';
import type { Connector } from '../../document/connector';
import { FAMILY } from '../../library/families';
import type { SignalId } from '../../signals/signals';
import type { Identification } from './identification';
import { kindShares } from './kind-shares';
import { type Layout, libraryLayouts } from './library-layouts';
import { PanelLayouts } from './panel-layouts';
import { kindIndex } from './pin-kinds';
import { type Post, postsOf } from './posts';

/** What a connector could be, before any reading: whole layouts, and pins that follow none of them. */
export interface Header {
  readonly posts: readonly Post[];
  /** Place of a post by its label. */
  readonly postOf: ReadonlyMap<string, number>;
  /** Layouts that readings can tell apart; of those that they cannot, the most usual stands for all. */
  readonly layouts: readonly Layout[];
  /** The kind of each post under each layout, at [post × layouts + layout]. */
  readonly kinds: Uint8Array;
  /** Logarithm of the weight of each layout, and of "none of these". */
  readonly logWeights: Float64Array;
  readonly logNone: number;
  /** Chances of the kinds of a post that follows no layout. */
  readonly strayKinds: Float64Array;
  readonly counted: Identification['counted'];
}

/** What a connector is, before any reading (common practice, no source). */
const SHARES = { library: 0.62, panel: 0.3, none: 0.08 } as const;
/** Panels that are listed one by one; where they are fewer than this share of all, they are drawn by chance. */
const LISTED = 8_000;
const LISTED_SHARE = 0.6;
const DRAWN = 3_000;
const SEED = 1;

/** How much a signal on a post is worth after the readings on that post alone, in any common measure. */
export type PostWorth = (post: number, kind: number) => number;

/**
 * Everything a connector could be. Large headers have too many panels to list: for these the layouts are drawn
 * by chance from all of them, weighed by the readings at single posts, so a header has to be made again when
 * such a reading is added.
 */
export function headerOf(connector: Connector, worth?: PostWorth): Header {
  const posts = postsOf(connector);
  const library = libraryLayouts(connector, posts);
  const inLibrary = library.reduce((sum, { weight }) => sum + weight, 0);
  const panels = panelsOn(connector, worth);
  const weighed = [
    ...library.map((layout) => ({
      ...layout,
      weight: (SHARES.library * layout.weight) / Math.max(1, inLibrary),
    })),
    ...panels.layouts.map((layout) => ({ ...layout, weight: SHARES.panel * layout.weight })),
  ];
  const { layouts, logWeights } = merged(weighed);
  const kinds = new Uint8Array(posts.length * layouts.length);
  layouts.forEach(({ signals }, at) => {
    for (const [post, signal] of signals.entries()) kinds[post * layouts.length + at] = kindIndex(signal);
  });
  return {
    posts,
    postOf: new Map(posts.map(({ label }, at) => [label, at])),
    layouts,
    kinds,
    logWeights,
    logNone: Math.log(SHARES.none + SHARES.panel * panels.left),
    strayKinds: kindShares(connector.family),
    counted: panels.counted,
  };
}

/** Whether a header of that size has its panels drawn by chance. */
export function isDrawn(header: Header): boolean {
  return header.counted.by === 'drawing';
}

interface Panels {
  readonly layouts: readonly (Layout & { readonly weight: number })[];
  /** The share of all panels that is not among them. */
  readonly left: number;
  readonly counted: Identification['counted'];
}

/** All panels on these posts, with the sum of their odds; and the most usual, where they are nearly all. */
const panelsFor = byIdentity(
  (connector: Connector) => {
    const { grid, family } = connector;
    if (family !== FAMILY.pinHeader || !PanelLayouts.fits(grid)) return undefined;
    const panels = new PanelLayouts(grid, postsOf(connector));
    const all = panels.weighed(() => 1).total;
    if (all === 0) return undefined;
    const usual = panels.usual(LISTED);
    const share = usual.reduce((sum, { odds }) => sum + odds, 0) / all;
    return { panels, all, share, ...(share >= LISTED_SHARE && { usual }) };
  },
  ({ grid, pins }) => [grid, pins],
);

function panelsOn(connector: Connector, worth: PostWorth | undefined): Panels {
  const found = panelsFor(connector);
  if (found === undefined) return { layouts: [], left: 1, counted: { by: 'one by one', layouts: 0 } };
  const { panels, all, share, usual } = found;
  const origin = { kind: 'panel' } as const;
  if (usual !== undefined) {
    const layouts = usual.map(({ signals, odds }) => ({ signals, weight: odds / all, origin }));
    return { layouts, left: Math.max(0, 1 - share), counted: { by: 'one by one', layouts: layouts.length } };
  }
  const drawn = drawnPanels(panels, all, worth ?? (() => 1));
  const layouts = drawn.map(({ signals, weight }) => ({ signals, weight, origin }));
  return { layouts, left: 0, counted: { by: 'drawing', layouts: layouts.length } };
}

/**
 * Panels drawn by the chance they have after the readings at single posts. Each has its exact weight; what all
 * others weigh together is shared out among the drawn by how often each was drawn, and taken back to the
 * weight before the readings, since the readings are counted later for every layout alike.
 */
function drawnPanels(panels: PanelLayouts, all: number, worth: PostWorth) {
  const worthOf = (post: number, signal: SignalId) => worth(post, kindIndex(signal));
  const weighed = panels.weighed(worthOf);
  const random = seededRandom(SEED);
  const drawn = new Map<
    string,
    { signals: readonly SignalId[]; odds: number; value: number; times: number }
  >();
  for (let i = 0; i < DRAWN; i++) {
    const one = panels.drawn(weighed, random);
    if (one === undefined) break;
    const key = one.signals.join();
    const known = drawn.get(key);
    if (known) known.times += 1;
    else {
      const value = one.signals.reduce((product, signal, post) => product * worthOf(post, signal), 1);
      drawn.set(key, { ...one, value, times: 1 });
    }
  }
  const found = [...drawn.values()];
  const exact = found.reduce((sum, { odds, value }) => sum + odds * value, 0);
  const rest = Math.max(0, weighed.total - exact);
  return found.map(({ signals, odds, value, times }) => ({
    signals,
    weight: (odds + (rest * times) / DRAWN / value) / all,
  }));
}

/** Layouts that no reading tells apart become one, with the weight of all; the heaviest stands for them. */
function merged(layouts: readonly Layout[]) {
  const groups = new Map<string, Layout[]>();
  for (const layout of layouts) {
    const key = layout.signals.map(kindIndex).join();
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [layout]);
    else group.push(layout);
  }
  const found = [...groups.values()];
  return {
    layouts: found.map(standingFor),
    logWeights: Float64Array.from(found, (group) =>
      Math.log(group.reduce((sum, { weight }) => sum + weight, 0)),
    ),
  };
}

function standingFor(group: readonly Layout[]): Layout {
  const first = group.reduce((a, b) => (b.weight > a.weight ? b : a));
  if (group.length === 1) return first;
  const alike = first.signals.map(
    (signal, post) =>
      new Set(group.map(({ signals }) => signals[post] ?? signal).filter((one) => one !== signal)),
  );
  return { ...first, alike };
}
