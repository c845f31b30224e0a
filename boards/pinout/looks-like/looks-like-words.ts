import { listed } from '../../base/listed';
import type { Turn } from '../../base/units';
import type { PlaceCompared } from './compare';
import type { Layout } from './known-layout';
import type { Likeness, LooksLike } from './likeness';
import type { Orientation } from './orientation';
import type { Tally } from './score';
import { tellingPin } from './telling-pin';

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

/** The same as a sign, told apart by its shape alone. */
export const VERDICT_SIGNS: Readonly<Record<PlaceCompared['verdict'], string>> = {
  agree: '=',
  partly: '≈',
  differ: '≠',
  'unknown-here': '+',
  'unknown-there': '·',
  'both-unknown': '·',
  'only-here': '·',
  'only-there': '·',
};

/** What came of the comparison, and what would tell more. */
export function outcomeWords(here: Layout, result: LooksLike): string {
  switch (result.outcome) {
    case 'nothing-known':
      return 'Nothing is known of its pins yet, so every header would match. Say what one or two of them are, or where no pin stands: the missing pin tells most.';
    case 'none-close':
      return result.nearest.length === 0
        ? 'None is close: no known header of about this shape has pins like these, however it is turned.'
        : 'None is close. The nearest are here to be looked at; too much differs to fill anything in from them.';
    case 'found':
      if (result.likenesses.length === 1) return 'One is close.';
      return result.tied === 1
        ? 'One matches best; the others are there to compare.'
        : tiedWords(here, result.likenesses.slice(0, result.tied));
  }
}

function tiedWords(here: Layout, tied: readonly Likeness[]): string {
  const match = `The first ${tied.length} match what is known so far equally well.`;
  const telling = tellingPin(here, tied);
  if (telling === undefined) return `${match} They differ in nothing that is still open here.`;
  const apart = telling.words === tied.length ? 'tells them apart' : 'tells most of them apart';
  return `${match} Pin\u00a0${telling.pin} ${apart}.`;
}

/** "93 %", and 100 only where everything agrees. */
export function scoreWords(score: number): string {
  return `${Math.floor(score * 100 + 1e-9)}\u00a0%`;
}

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

/** "library and USB_2 of this board": where layouts stand that cannot be told apart. */
export function fromWords({ layout, also }: Pick<Likeness, 'layout' | 'also'>): string {
  const { title } = layout.connector;
  const all = [layout, ...also].map(({ from, connector }) =>
    connector.title === title ? from : `${from} (as ${connector.title})`,
  );
  return listed(all.length > 4 ? [...all.slice(0, 3), `${all.length - 3} more`] : all);
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
