import { listed } from '../../boards/base/listed';
import type { Build } from '../../boards/document/build';
import { count } from '../../boards/document/problem/shown-value';
import type { Severity } from '../../boards/findings/finding';
import { fillLimit } from '../../boards/routing/fill/fill';
import { lengthWords, spareWords } from '../../boards/routing/fill/length-words';
import type { OpeningUse } from '../../boards/routing/laid/as-laid';
import type { Bundle } from '../../boards/routing/laid/bundles';
import type { CableFamily } from '../../boards/routing/laid/cable-family';
import { runName, runNameOf } from '../../boards/routing/laid/end-names';
import { sightWords, viaWords } from '../../boards/routing/laid/remedy-words';
import type { RouteDifference } from '../../boards/routing/laid/route-differences';
import type { RunVerdict } from '../../boards/routing/laid/run-verdict';
import { atLeastPercent, percent } from '../../boards/routing/laid/run-words';
import type { AllRoutes, RoutingProgress } from '../../boards/routing/search/all-routes';
import type { Route } from '../../boards/routing/search/reach';
import { counted } from './list-words';

export const CABLE_FAMILY_WORDS: Readonly<Record<CableFamily, string>> = {
  supply: 'Supply',
  data: 'Data',
  fan: 'Fans',
  panel: 'Panel',
  usb: 'USB and ports',
  audio: 'Sound',
  other: 'Other',
};

/** How bad it is; undefined where nothing is wrong, also with what was not begun. */
export function verdictSeverity(verdict: RunVerdict): Severity | undefined {
  switch (verdict.kind) {
    case 'too-short':
    case 'barred':
    case 'crowded':
      return 'fault';
    case 'open':
      return verdict.broken ? 'doubt' : undefined;
    case 'laid':
    case 'not-laid':
      return undefined;
  }
}

/** A way to choose, with what it costs. */
export function wayWords(build: Build, route: Route): string {
  const end =
    route.spareMm < 0
      ? `too long by ${lengthWords(-route.spareMm)}`
      : `${spareWords(route.spareMm)} to spare`;
  return `${viaWords(build, route)}: ${sightWords(route)}, ${end}`;
}

/** What lies in an opening. */
export function openingUseWords({ fill, runs, over }: OpeningUse, names: readonly string[]): string {
  if (runs.length === 0) return 'empty';
  const all = runs.length;
  const { cables, limit } = over ?? { cables: all, limit: fillLimit(all) };
  const share = over ? `too much, ${atLeastPercent(over.fill)}` : percent(fill);
  const by = cables < all ? ' by the two thickest alone' : '';
  return `${share}${by} of the ${percent(limit)} that ${counted(cables, 'cable')} may fill: ${listed(names)}`;
}

/** How thick what lies along one path is. */
export function bundleWords(build: Build, { runs, leastMm, usualMm }: Bundle): string {
  const names = runs.map(({ lead, run }) => runName(build, lead, run));
  const thick =
    lengthWords(usualMm) === lengthWords(leastMm)
      ? `about ${lengthWords(usualMm)} thick`
      : `at least ${lengthWords(leastMm)} thick, usually about ${lengthWords(usualMm)}`;
  return `${counted(runs.length, 'cable')}, ${thick}: ${listed(names)}`;
}

/** How far laying all has come. */
export function layingProgressWords(progress: RoutingProgress | null): string {
  if (progress === null) return 'Looking for a way for every cable.';
  return progress.stage === 'ways'
    ? `Each cable by itself: ${progress.done} of ${progress.of} done.`
    : `All of them in the openings: ${count(progress.branches)} branches looked at.`;
}

/** What laying all together would change about one run. */
export function routeDifferenceWords(build: Build, { now, planned }: RouteDifference): string {
  if (planned === undefined) return 'No room is left for it: take it out';
  const way = wayWords(build, planned);
  return now === undefined ? way : `${way}, instead of ${lengthWords(now.totalMm)}`;
}

/** What was found for all cables together, and what is proved of it. */
export function layingFoundWords(build: Build, { cables, proved }: AllRoutes): string {
  if (cables.length === 0)
    return 'No cable can be laid yet. Measure cables, place their plugs, and say where they begin.';
  const names = (kind: 'crowded-out' | 'unreached') =>
    cables.flatMap((each) => (each.kind === kind ? runNameOf(build, each.cable) : []));
  const laid = cables.filter(({ kind }) => kind === 'laid').length;
  const [crowded, unreached] = [names('crowded-out'), names('unreached')];
  return [
    `${laid} of ${counted(cables.length, 'cable')} can be laid.`,
    crowded.length > 0 ? `The openings have no room left for ${listed(crowded)}.` : '',
    unreached.length > 0
      ? `No way reaches for ${listed(unreached)}: choose ${unreached.length === 1 ? 'it' : 'each'} for what would help.`
      : '',
    proved
      ? 'No other ways leave fewer out or less in sight; this is proved.'
      : 'A better way may exist: the search was too long to prove this one.',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** Where the search has ended, and there is nothing for the cables as they are. */
export const NO_LAYING_WORDS = {
  failed:
    'The search came to a stop through a fault of this program. Your cables lie as they did; choose ways by hand, or try again.',
  stopped: 'Stopped before there was an answer. Your cables lie as they did.',
  done: 'Cables, plugs, pinned ways or the tray have changed since this was worked out, so it is not shown any more.',
} as const;
