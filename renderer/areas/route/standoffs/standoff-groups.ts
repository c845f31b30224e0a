import { capital } from '../../../../boards/base/capital';
import type { Build } from '../../../../boards/document/build';
import type { Outline } from '../../../../boards/document/outline';
import type { Tray } from '../../../../boards/document/tray';
import type { Severity } from '../../../../boards/findings/finding';
import { unsureHoles } from '../../../../boards/library/form-factors';
import { holeName, standoffName, standoffWords } from '../../../../boards/routing/case/standoff-words';
import { type Standoffs, standoffsFor } from '../../../../boards/routing/case/standoffs';

type Known = Extract<Standoffs, { kind: 'known' }>;
type Use = Known['uses'][number];

/** What is known of a place: a standoff that cannot be taken out is there without looking. */
export type Seen = 'set' | 'empty' | 'unseen' | 'fixed';

/** One place of the tray beside the board. */
export interface StandoffRow {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  readonly seen: Seen;
  /** What has to be looked at, with its words. */
  readonly found?: { readonly severity: Severity; readonly words: string };
}

export interface StandoffGroup {
  readonly kind: Use['kind'];
  readonly title: string;
  readonly rows: readonly StandoffRow[];
}

/** A hole of the board with nothing under it. */
export interface HoleWithout {
  readonly id: string;
  readonly words: string;
}

/** The places of the tray by what they are for this board, those first where something is wrong; or what is missing. */
export function standoffGroups(
  build: Build,
  tray: Tray,
):
  | { readonly kind: 'unknown'; readonly missing: Extract<Standoffs, { kind: 'unknown' }>['missing'] }
  | {
      readonly kind: 'known';
      readonly groups: readonly StandoffGroup[];
      readonly without: readonly HoleWithout[];
    } {
  const { outline } = build.board;
  const said = standoffsFor(outline, tray, unsureHoles(outline));
  if (said.kind === 'unknown') return said;
  const rows = said.uses.map((use) => ({ use, row: rowOf(use, said, build, tray) }));
  const groups = TITLES.map(([kind, title]) => ({
    kind,
    title,
    rows: rows.filter(({ use }) => use.kind === kind).map(({ row }) => row),
  }));
  const without = said.findings.flatMap((finding) =>
    finding.code === 'unsupported'
      ? [{ id: finding.hole, words: standoffWords(finding, outline, tray) }]
      : [],
  );
  return { kind: 'known', groups: groups.filter((group) => group.rows.length > 0), without };
}

const TITLES: readonly (readonly [Use['kind'], string])[] = [
  ['empty', 'Stay empty'],
  ['off', 'Near a hole, not under it'],
  ['set', 'Get a standoff'],
  ['beside', 'Beside the board'],
];

function rowOf(use: Use, { findings }: Known, { board: { outline } }: Build, tray: Tray): StandoffRow {
  const { standoff: id } = use;
  const place = tray.standoffs?.find((each) => each.id === id);
  const seen = place?.fixed ? 'fixed' : (place?.seen ?? 'unseen');
  const found = findings.find((each) => 'standoff' in each && each.standoff === id);
  return {
    id,
    name: capital(standoffName(id, tray)),
    words: whatFor(use, outline, seen),
    seen,
    ...(found && { found: { severity: found.level, words: standoffWords(found, outline, tray) } }),
  };
}

function whatFor(use: Use, outline: Outline, seen: Seen): string {
  switch (use.kind) {
    case 'set':
      return `under ${holeName(use.hole, outline)}${seen === 'empty' ? ', still to be set' : ''}`;
    case 'off':
      return `near ${holeName(use.hole, outline)}`;
    case 'empty':
      return 'under no hole of this board';
    case 'beside':
      return 'for other boards';
  }
}

/** What is in each place once all is as it should be; places beside the board and those near a hole are left alone. */
export function asItShouldBe(
  groups: readonly StandoffGroup[],
): readonly { readonly standoff: string; readonly seen: 'set' | 'empty' }[] {
  return groups.flatMap(({ kind, rows }) => {
    if (kind !== 'set' && kind !== 'empty') return [];
    return rows
      .filter(({ seen }) => seen !== 'fixed' && seen !== kind)
      .map(({ id }) => ({ standoff: id, seen: kind }));
  });
}
