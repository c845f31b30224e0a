import { capital } from '../../base/capital';
import { listed } from '../../base/listed';
import type { Build } from '../../document/build';
import { lengthWords, missingWords, spareWords } from '../fill/length-words';
import type { Route } from '../search/reach';
import { spotName } from './end-names';
import type { Remedy } from './remedies';
import { openingName, passageWords } from './run-words';

/** A remedy that was tried, in a sentence or two: what to do, and what comes of it. */
export function remedyWords(build: Build, remedy: Remedy): string {
  const { route } = remedy;
  switch (remedy.kind) {
    case 'other-way':
      return `It reaches by another way${throughWords(build, route)}: ${sightWords(route)}, ${spareWords(route.spareMm)} to spare.`;
    case 'less-slack':
      return `Nothing moved, it reaches${throughWords(build, route)} with ${lengthWords(remedy.slackMm)} of slack at each end, less than you asked for. Then look that no plug is pulled to the side.`;
    case 'extension':
      return `An extension of at least ${missingWords(remedy.byMm)} reaches${throughWords(build, route)}, with the slack you asked for: ${sightWords(route)}. Lay its joint where it can be looked at.`;
    case 'openings': {
      const why = remedy.openings.map(({ opening, problem }) => passageWords(build, opening, problem));
      const names = remedy.openings.map(({ opening }) => openingName(build, opening));
      return `It would reach through ${listed(names)} if that let it pass: ${listed(why)}.`;
    }
    case 'tighter-bend':
      return `A cable like it that may be bent to an inside radius of ${lengthWords(remedy.bendRadiusMm)} reaches${throughWords(build, route)}: ${sightWords(route)}.`;
    case 'other-bay':
      return `In ${spotName(build, remedy.bay)} what it ends at is reached${throughWords(build, route)}, ${spareWords(route.spareMm)} to spare.`;
  }
}

/** How much of a way is in sight, out of its length. */
export function sightWords({ visibleMm, totalMm }: Route): string {
  return `${lengthWords(totalMm)} long, ${visibleMm === 0 ? 'nothing' : lengthWords(visibleMm)} of it in sight`;
}

/** A way by the openings that it passes. */
export function viaWords(build: Build, { openings }: Route): string {
  if (openings.length === 0) return 'On one side all the way';
  return capital(`through ${listed(openings.map((opening) => openingName(build, opening)))}`);
}

function throughWords(build: Build, { openings }: Route): string {
  if (openings.length === 0) return '';
  return ` through ${listed(openings.map((opening) => openingName(build, opening)))}`;
}
