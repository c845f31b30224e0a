import { listed } from '../../base/listed';
import type { Turn } from '../../base/units';
import type { PlaceCompared } from './compare';
import type { Layout } from './known-layout';
import type { Likeness } from './likeness';
import type { Orientation } from './orientation';
import type { Tally } from './score';

const TURNED: Readonly<Record<Turn, string>> = {
  0: '',
  90: 'turned a quarter to the right',
  180: 'turned by half',
  270: 'turned a quarter to the left',
};

/** "as drawn", "turned by half", "in mirror, turned by half": how the known layout lies. */
export function orientationWords({ turn, mirrored }: Orientation): string {
  const words = [mirrored ? 'in mirror' : '', TURNED[turn]].filter((each) => each !== '');
  return words.length === 0 ? 'as drawn' : words.join(', ');
}

/** How one place compares, in a word or two that stand in a list. */
export const VERDICT_WORDS: Readonly<Record<PlaceCompared['verdict'], string>> = {
  agree: 'agrees',
  partly: 'partly',
  differ: 'differs',
  'unknown-here': 'to fill in',
  'unknown-there': 'not said there',
  'both-unknown': 'known to neither',
  'only-here': 'past its edge',
  'only-there': 'past your edge',
};

/** "7 of 8 known pins agree, 1 partly", with the least first left out. */
export function tallyWords(tally: Tally): string {
  const known = tally.agree + tally.partly + tally.differ + tally['unknown-there'];
  const parts = [
    `${tally.agree} of ${known} known ${known === 1 ? 'pin agrees' : 'pins agree'}`,
    ...counted(tally.partly, 'partly', 'partly'),
    ...counted(tally.differ, 'differs', 'differ'),
    ...counted(tally['unknown-there'], 'not said there', 'not said there'),
  ];
  return parts.join(', ');
}

/** What else is to be looked at before the likeness is believed, one sentence each. */
export function cautionWords(here: Layout, likeness: Likeness): readonly string[] {
  const { layout, orientation, sameShape, samePitch, sameNumbers } = likeness;
  const there = layout.connector.grid;
  return [
    ...(orientation.mirrored
      ? ['In mirror: one of the two may have been drawn from below. Look at the key on the board itself.']
      : []),
    ...(sameShape ? [] : [`Another shape: it has ${shape(there)} positions, this one ${shape(here.grid)}.`]),
    ...(samePitch ? [] : [`Another pitch: ${mm(there.pitchMm)} there, ${mm(here.grid.pitchMm)} here.`]),
    ...(sameNumbers ? [] : ['Counted otherwise: the places are compared, not the numbers.']),
  ];
}

/** "library", "library and two more": whose layouts cannot be told apart. */
export function fromWords({ layout, also }: Pick<Likeness, 'layout' | 'also'>): string {
  const others = also.map(({ from, connector }) => `${connector.title} (${from})`);
  const shown = others.length > 3 ? [...others.slice(0, 2), `${others.length - 2} more`] : others;
  return others.length === 0 ? layout.from : `${layout.from}; the same as ${listed(shown)}`;
}

function counted(count: number, one: string, many: string): readonly string[] {
  return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
}

function shape({ rows, cols }: Layout['grid']): string {
  return `${rows}\u00a0×\u00a0${cols}`;
}

function mm(pitchMm: number): string {
  return `${pitchMm}\u00a0mm`;
}
