import { capital } from '../../boards/base/capital';
import { connectorsOf, leadsOf, unitsOf } from '../../boards/document/lookup';
import { UNIT_KINDS } from '../../boards/document/unit';
import { blankUnit } from '../../boards/library/blank-unit';
import { type MadeUnit, makeUnit } from '../../boards/library/make-unit';
import { UNIT_TYPES } from '../../boards/library/units/index';
import { doCommand } from '../do-command';
import { freshId } from '../files/file-name';
import { Window } from '../look/window';
import { counted } from '../words/list-words';
import { UNIT_KIND_WORDS, unitWords } from '../words/unit-words';
import { useBuild, useWorkbench } from '../workbench';
import { type SearchEntry, SearchList } from './search-list';

/** Supplies, drives, cards and hubs of the library with the cables in their boxes, and blank ones of every kind. */
export function AddUnitDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const build = useBuild();
  const add = (title: string, make: (named: { id: string; name: string }) => MadeUnit) => {
    const names = new Set(unitsOf(build).map(({ name }) => name));
    const name = freeName(capital(title), names);
    // Connectors and cables begin with the unit's id, so none of theirs may be taken either.
    const taken = new Set([
      ...unitsOf(build).map(({ id }) => id),
      ...[...connectorsOf(build), ...leadsOf(build)].flatMap(({ id }) => heads(id)),
    ]);
    const id = freshId(title.slice(0, MOST), 'unit', taken);
    const made = make({ id, name });
    if (!doCommand(workbench, { name: 'add-unit', args: made })) return;
    onClose();
    workbench.session.getState().openDialog({ kind: 'unit', unit: id });
  };
  const entries: readonly SearchEntry[] = [
    ...UNIT_TYPES.map(
      ({ id, title, source, unit, cables }): SearchEntry => ({
        id,
        title: capital(title),
        words: `${unitWords({ ...unit, id, name: title })}${cables.length > 0 ? `, ${counted(cables.length, 'cable')}` : ''}; ${source}`,
        run: () => add(shortName(title), (named) => makeUnit(id, named)),
      }),
    ),
    ...UNIT_KINDS.map(
      (kind): SearchEntry => ({
        id: `blank-${kind}`,
        title: `Blank: ${UNIT_KIND_WORDS[kind]}`,
        words: 'Nothing is known of it yet; give it connectors and pins of your own.',
        run: () =>
          add(UNIT_KIND_WORDS[kind], (named) => ({ unit: blankUnit(kind, named), leads: [], seats: [] })),
      }),
    ),
  ];
  return (
    <Window title="Add a unit" size="large" onClose={onClose}>
      <SearchList
        label="Search units"
        placeholder="Supply, drive, card, hub…"
        entries={entries}
        empty="The library has no unit of that name. A blank one takes any connectors."
      />
    </Window>
  );
}

/** Ids of connectors and cables begin with the unit's: this leaves room for what follows. */
const MOST = 40;

/** "modular supply, outlets as on the sheet of Ash" is called "modular supply Ash" in a build. */
function shortName(title: string): string {
  const [what = title, rest = ''] = title.split(', ');
  const maker = /sheet of (\w+)$/.exec(rest)?.[1];
  return maker === undefined ? what : `${what} ${maker}`;
}

function freeName(name: string, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  let number = 2;
  while (taken.has(`${name} ${number}`)) number++;
  return `${name} ${number}`;
}

/** "a-b-c": "a", "a-b". */
function heads(id: string): readonly string[] {
  const parts = id.split('-');
  return parts.slice(1).map((_, at) => parts.slice(0, at + 1).join('-'));
}
