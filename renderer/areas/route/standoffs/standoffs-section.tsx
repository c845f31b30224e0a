import { useMemo } from 'react';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import type { Build } from '../../../../boards/document/build';
import type { Tray } from '../../../../boards/document/tray';
import { STANDOFF_SOURCE } from '../../../../boards/routing/case/standoff-words';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { SeveritySign } from '../../../look/severity-sign';
import { counted } from '../../../words/list-words';
import { countsWords } from '../../../words/severity-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { Fold } from '../fold';
import { PartRow, RowGroup } from '../rows';
import {
  asItShouldBe,
  type HoleWithout,
  type Seen,
  type StandoffGroup,
  type StandoffRow,
  standoffGroups,
} from './standoff-groups';
import './standoffs.css';

/** Which places of the tray get a standoff for this board, which stay empty, and which holes are left without. */
export function StandoffsSection() {
  const build = useBuild();
  const { tray } = build.case;
  if (tray === undefined) return null;
  return <Standoffs build={build} tray={tray} />;
}

function Standoffs({ build, tray }: { readonly build: Build; readonly tray: Tray }) {
  const said = useMemo(() => standoffGroups(build, tray), [build, tray]);
  const chosen = useSession(
    ({ selection }) => selection.kind === 'on-tray' && selection.part.kind === 'standoff',
  );
  if (said.kind === 'unknown')
    return (
      <Fold title="Standoffs" unfolds={chosen}>
        <Missing missing={said.missing} />
      </Fold>
    );
  const { groups, without } = said;
  const found = groups.flatMap(({ rows }) => rows.flatMap((row) => row.found ?? []));
  return (
    <Fold title={found.length === 0 ? 'Standoffs' : `Standoffs, ${countsWords(found)}`} unfolds={chosen}>
      <p className="soft">{summary(groups, without)}</p>
      {groups.map(({ kind, title, rows }) => (
        <RowGroup key={kind} title={title}>
          {rows.map((row) => (
            <Row key={row.id} row={row} />
          ))}
        </RowGroup>
      ))}
      {without.length > 0 && (
        <RowGroup title="Holes without one">
          {without.map(({ id, words }) => (
            <li key={id} className="standoff-without">
              <SeveritySign severity="note" spoken />
              <span>{words}</span>
            </li>
          ))}
        </RowGroup>
      )}
      <AsListed groups={groups} />
      <p className="soft small">{STANDOFF_SOURCE}</p>
    </Fold>
  );
}

/** Notes at once what a person sees who has set and cleared them all. */
function AsListed({ groups }: { readonly groups: readonly StandoffGroup[] }) {
  const workbench = useWorkbench();
  const seen = asItShouldBe(groups);
  return (
    <div className="form-doings">
      <Button
        disabled={seen.length === 0}
        onPress={() => doCommand(workbench, { name: 'note-standoffs', args: { seen: [...seen] } })}
      >
        All are as listed
      </Button>
    </div>
  );
}

const MISSING = {
  holes: 'The board sheet has no mounting holes yet. A form factor brings them, or they are measured.',
  standoffs: 'The tray has no places of standoffs yet.',
  'board-place': 'It is not said yet where on the tray the board goes.',
} as const;

function Missing({ missing }: { readonly missing: keyof typeof MISSING }) {
  const { session } = useWorkbench();
  const toPlan = () => {
    session.getState().goTo('document');
    session.getState().showPage('plan');
  };
  return (
    <>
      <p className="soft">{MISSING[missing]}</p>
      <div className="form-doings">
        {missing === 'holes' ? (
          <Button onPress={toPlan}>Go to the board plan</Button>
        ) : (
          <Button onPress={() => session.getState().select({ kind: 'nothing' })}>
            Go to the tray as a whole
          </Button>
        )}
      </div>
    </>
  );
}

function summary(groups: readonly StandoffGroup[], without: readonly HoleWithout[]): string {
  const rowsOf = (kind: StandoffGroup['kind']) => groups.find((group) => group.kind === kind)?.rows ?? [];
  const wanted = rowsOf('set');
  const inPlace = wanted.filter(({ seen }) => seen === 'set' || seen === 'fixed').length;
  return [
    `${counted(wanted.length, 'standoff')} for this board, ${inPlace === wanted.length ? 'all' : inPlace} of them seen in place.`,
    ...(without.length === 0 ? [] : [`${counted(without.length, 'hole')} without one.`]),
  ].join(' ');
}

function Row({ row }: { readonly row: StandoffRow }) {
  const { id, name, words, seen, found } = row;
  return (
    <PartRow
      part={{ kind: 'standoff', id }}
      name={name}
      words={words}
      control={<SeenChoice id={id} name={name} seen={seen} />}
    >
      {found && <Found found={found} />}
    </PartRow>
  );
}

function Found({ found }: { readonly found: NonNullable<StandoffRow['found']> }) {
  return (
    <p className="standoff-found">
      <SeveritySign severity={found.severity} spoken />
      <span>{found.words}</span>
    </p>
  );
}

/** What has to be looked at at one place, where there is something. */
export function StandoffFound({ id }: { readonly id: string }) {
  const build = useBuild();
  const { tray } = build.case;
  const said = tray && standoffGroups(build, tray);
  if (said?.kind !== 'known') return null;
  const row = said.groups.flatMap(({ rows }) => rows).find((each) => each.id === id);
  return row?.found ? <Found found={row.found} /> : null;
}

interface SeenChoiceProps {
  readonly id: string;
  readonly name: string;
  readonly seen: Seen;
}

/** Whether a standoff is in its place; neither while nobody has looked. */
function SeenChoice({ id, name, seen }: SeenChoiceProps) {
  const workbench = useWorkbench();
  if (seen === 'fixed') return <span className="soft small standoff-fixed">pressed in</span>;
  return (
    <ToggleButtonGroup
      className="segments"
      aria-label={`${name}: what is there`}
      selectionMode="single"
      selectedKeys={seen === 'unseen' ? [] : [seen]}
      onSelectionChange={(keys) => {
        const look = keys.has('set') ? 'set' : keys.has('empty') ? 'empty' : null;
        doCommand(workbench, { name: 'note-standoffs', args: { seen: [{ standoff: id, seen: look }] } });
      }}
    >
      <ToggleButton id="set" className="segment">
        In
      </ToggleButton>
      <ToggleButton id="empty" className="segment">
        Empty
      </ToggleButton>
    </ToggleButtonGroup>
  );
}
