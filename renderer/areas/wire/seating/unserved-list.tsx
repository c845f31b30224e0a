import { samePlug, seatOf } from '../../../../boards/document/lookup';
import type { Unserved, WayOut } from '../../../../boards/planner/ways-out';
import { conflictWords, helplessWords, wayOutWords } from '../../../../boards/planner/words';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { keyed } from '../../../look/keyed';
import { SeveritySign } from '../../../look/severity-sign';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { plugTitleOf } from '../placing/hand';
import type { FoundSeating, SeatingRun } from './seating-run';

interface UnservedListProps {
  readonly found: FoundSeating;
  readonly run: SeatingRun;
  /** A remedy has been applied: the plan is another one now. */
  readonly onRemedy: () => void;
}

/** Every plug without a place: why, with the pins on the drawing, and what would help. */
export function UnservedList({ found, run, onRemedy }: UnservedListProps) {
  const build = useBuild();
  if (found.plan.off.length === 0) return null;
  return (
    <ul className="unserved-list" aria-label="Plugs without a place">
      {found.plan.off.map((plug) => {
        const unserved = found.unserved.find((each) => samePlug(each.plug, plug));
        return (
          <li key={`${plug.lead} ${plug.plug}`} className="finding">
            <SeveritySign severity="fault" />
            <div className="finding-words">
              <p className="finding-severity severity-fault">No place</p>
              {unserved ? (
                <Explained unserved={unserved} onRemedy={onRemedy} />
              ) : (
                <p>
                  {plugTitleOf(build, plug)} has no place.{' '}
                  {run.stage === 'working'
                    ? 'Why is being worked out.'
                    : 'It was stopped before it was known why.'}
                </p>
              )}
            </div>
          </li>
        );
      })}
    </ul>
  );
}

interface ExplainedProps {
  readonly unserved: Unserved;
  readonly onRemedy: () => void;
}

function Explained({ unserved, onRemedy }: ExplainedProps) {
  const workbench = useWorkbench();
  const build = useBuild();
  const { plug, conflict, waysOut } = unserved;
  const helpless = helplessWords(unserved);
  const id = `no place ${plug.lead} ${plug.plug}`;
  const chosen = useSession(({ selection }) => selection.kind === 'finding' && selection.id === id);

  const show = () => {
    const leads = conflict.plugs.map(({ lead }) => lead);
    workbench.session.getState().select({ kind: 'finding', id, pins: conflict.pins, leads });
    const connectors = [
      ...conflict.pins.map(({ connector }) => connector),
      ...conflict.plugs.flatMap((ref) => seatOf(build, ref)?.connector ?? []),
    ];
    if (connectors.length > 0) workbench.canvas.current?.show([...new Set(connectors)]);
  };
  const apply = ({ command, letGo }: WayOut) => {
    for (const ref of letGo) workbench.session.getState().keep(ref, false);
    if (command && doCommand(workbench, command)) onRemedy();
  };

  return (
    <>
      <h3 data-chosen={chosen || undefined}>
        <Button kind="link" onPress={show}>
          {conflictWords(build, unserved)}
        </Button>
      </h3>
      {helpless !== '' && <p className="soft">{helpless}</p>}
      <ul className="remedies">
        {keyed(waysOut, (way) => wayOutWords(build, plug, way)).map(([key, way]) => {
          const words = wayOutWords(build, plug, way);
          return (
            <li key={key}>
              {way.command || way.letGo.length > 0 ? (
                <Button kind="link" onPress={() => apply(way)}>
                  {words}
                </Button>
              ) : (
                <span className="remedy-text">{words}</span>
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}
