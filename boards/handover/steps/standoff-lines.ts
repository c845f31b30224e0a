import { listed } from '../../base/listed';
import { shortSum } from '../../base/short-sum';
import type { Build } from '../../document/build';
import type { Tray } from '../../document/tray';
import { unsureHoles } from '../../library/form-factors';
import { holeNames, standoffName, standoffWords } from '../../routing/case/standoff-words';
import { type Standoffs, standoffsFor } from '../../routing/case/standoffs';

/** The places of the tray beside the holes of the board, where both are known. */
export type KnownStandoffs = Extract<Standoffs, { kind: 'known' }>;

/** What the tray and the board say of standoffs; undefined where one of them is not known. */
export function knownStandoffs({ board, case: { tray } }: Build): KnownStandoffs | undefined {
  const known = tray && standoffsFor(board.outline, tray, unsureHoles(board.outline));
  return known?.kind === 'known' ? known : undefined;
}

/** What to do with the standoffs of this tray for this board, line by line. */
export function standoffLines({ board, case: { tray } }: Build, known: KnownStandoffs): readonly string[] {
  if (tray === undefined) return [];
  const { outline } = board;
  const { uses, without, findings } = known;
  const holes = uses.flatMap((use) => (use.kind === 'set' ? [use.hole] : []));
  const fixed = inPlaces(tray, known, 'set', ({ fixed }) => fixed === true);
  const takenOut = inPlaces(tray, known, 'empty', ({ fixed, seen }) => !fixed && seen === 'set');
  const empty = inPlaces(tray, known, 'empty', ({ fixed, seen }) => !fixed && seen !== 'set');
  const doubts = findings.flatMap((finding) =>
    finding.code === 'off' || finding.code === 'unsure-hole' ? [standoffWords(finding, outline, tray)] : [],
  );
  return [
    ...(holes.length > 0 ? [`One under ${holeNames(holes, outline)}: ${counted(holes.length)} in all.`] : []),
    ...(fixed.length > 0 ? [`Pressed in already: ${listed(fixed)}.`] : []),
    ...(takenOut.length > 0 ? [`Take out ${listed(takenOut)}: the board has no hole there.`] : []),
    ...(empty.length > 0
      ? [`Leave empty: ${listed(empty)}. Metal there would touch the underside of the board and short it.`]
      : []),
    ...doubts,
    ...(without.length > 0
      ? [
          `Nothing is under ${holeNames(without, outline)}: hold the board there from below when a plug is pushed on.`,
        ]
      : []),
    'Hold the board over them once: a standoff is seen through every hole that has one.',
  ];
}

/** What makes it impossible to put this board in. */
export function standoffCautions(
  { board, case: { tray } }: Build,
  { findings }: KnownStandoffs,
): readonly string[] {
  if (tray === undefined) return [];
  return findings.flatMap((finding) =>
    finding.code === 'short' && finding.fixed ? [standoffWords(finding, board.outline, tray)] : [],
  );
}

function counted(count: number): string {
  return `${count}\u00a0${count === 1 ? 'standoff' : 'standoffs'}`;
}

type Place = NonNullable<Tray['standoffs']>[number];

function inPlaces(
  tray: Tray,
  { uses }: KnownStandoffs,
  kind: KnownStandoffs['uses'][number]['kind'],
  isMeant: (place: Place) => boolean,
): readonly string[] {
  const ids = new Set(uses.filter((use) => use.kind === kind).map(({ standoff }) => standoff));
  const places = tray.standoffs ?? [];
  return places
    .filter((place) => ids.has(place.id) && isMeant(place))
    .map(({ id }) => standoffName(id, tray));
}

/**
 * What the step is remembered by: which places get one and which stay empty, as a short number, so that
 * another board or another tray is to be done again.
 */
export function standoffSum({ uses }: KnownStandoffs): string {
  return shortSum(uses.map((use) => `${use.kind} ${use.standoff} ${'hole' in use ? use.hole : ''}`).join());
}
