import type { Build } from '../../../../boards/document/build';
import { assignmentsOf } from '../../../../boards/routing/assign/assignments';
import { movesTo } from '../../../../boards/routing/assign/moves';
import { ASSIGN_SOURCES, missingWords, provenWords } from '../../../../boards/routing/assign/words';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { keyed } from '../../../look/keyed';
import { SeveritySign } from '../../../look/severity-sign';
import { counted } from '../../../words/list-words';
import { useBuild, useWorkbench } from '../../../workbench';
import { Fold } from '../fold';
import { RowGroup } from '../rows';
import { type AssignRow, assignGroups, assumedWords, ofName } from './assign-rows';
import { Figures } from './figures';
import './assign.css';

const OPEN = { id: 'open', label: 'Search decides' } as const;

/** Which header every fan goes on, and which port and cable every drive, with reasons; a person can choose any. */
export function AssignSection() {
  const build = useBuild();
  const groups = assignGroups(build);
  if (groups.length === 0) return null;
  const wanting = groups.flatMap(({ rows }) => rows.filter((row) => row.wanting)).length;
  return (
    <Fold title={wanting === 0 ? 'Fans and drives' : `Fans and drives, ${counted(wanting, 'doubt')}`}>
      {groups.map(({ kind, title, rows, loads }) => (
        <RowGroup
          key={kind}
          title={title}
          below={keyed(loads).map(([key, words]) => (
            <p key={key} className="soft small">
              {words}
            </p>
          ))}
        >
          {rows.map((row) => (
            <Row key={row.id} row={row} />
          ))}
        </RowGroup>
      ))}
      <Moving build={build} />
      <Figures />
      <p className="soft small">{ASSIGN_SOURCES.ports}</p>
      <p className="soft small">{ASSIGN_SOURCES.fans}</p>
    </Fold>
  );
}

function Row({ row }: { readonly row: AssignRow }) {
  const workbench = useWorkbench();
  const { kind, id, name, now, words, wanting, chosen, options } = row;
  return (
    <li className="route-row assign-row">
      <div className="route-row-line">
        <span className="route-row-name">
          <span>{name}</span>
          <span className="soft small">{now === undefined ? 'not plugged in' : `now on ${now}`}</span>
        </span>
        <Choice
          label={`Where ${name} goes`}
          labelShown={false}
          options={[OPEN, ...options]}
          chosen={chosen ?? OPEN.id}
          onChoose={(on) =>
            doCommand(workbench, {
              name: 'choose-place',
              args: { kind, of: id, on: on === OPEN.id ? null : on },
            })
          }
        />
      </div>
      <p className="assign-words" data-wanting={wanting || undefined}>
        {wanting && <SeveritySign severity="doubt" spoken />}
        <span>{words}</span>
      </p>
    </li>
  );
}

/** Moves the plugs to where they go, in one step. */
function Moving({ build }: { readonly build: Build }) {
  const workbench = useWorkbench();
  const found = assignmentsOf(build);
  const { seats, off, missing } = movesTo(build, found);
  const count = seats.length + off.length;
  const unproved = [found.ports, found.branches, found.fans].find(({ proven }) => !proven);
  return (
    <>
      {missing.map(({ of, code }) => (
        <p key={of} className="assign-words">
          <SeveritySign severity="doubt" spoken />
          <span>{missingWords({ of: ofName(build, of), code })}</span>
        </p>
      ))}
      {unproved && <p className="soft small">{provenWords(unproved)}</p>}
      <div className="form-doings">
        <Button
          disabled={count === 0}
          onPress={() =>
            doCommand(workbench, { name: 'arrange-plugs', args: { seats: [...seats], off: [...off] } })
          }
        >
          {count === 0 ? 'All plugs are where they go' : `Move ${counted(count, 'plug')} there`}
        </Button>
      </div>
      <Assumed build={build} />
    </>
  );
}

function Assumed({ build }: { readonly build: Build }) {
  const said = assignmentsOf(build).assumed.map((each) => assumedWords(build, each));
  if (said.length === 0) return null;
  return (
    <details className="assign-details">
      <summary>Taken as usual: {counted(said.length, 'figure')}</summary>
      <ul className="soft small">
        {keyed(said).map(([key, words]) => (
          <li key={key}>{words}</li>
        ))}
      </ul>
    </details>
  );
}
