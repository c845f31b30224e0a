import type { Build } from '../../../boards/document/build';
import { unitWith } from '../../../boards/document/lookup';
import { type Finding, findingId, placeInTray, type Remedy } from '../../../boards/findings/finding';
import { wordsOf } from '../../../boards/findings/words';
import { doCommand } from '../../do-command';
import { Button } from '../../look/button';
import { keyed } from '../../look/keyed';
import { SeveritySign } from '../../look/severity-sign';
import { SEVERITY_WORDS } from '../../words/severity-words';
import { useSession, useWorkbench } from '../../workbench';

interface FindingItemProps {
  readonly finding: Finding;
  readonly build: Build;
  /** "would-be" and "would-go" while a plug is in the hand. */
  readonly tense: 'is' | 'would-be' | 'would-go';
}

const TENSE_WORDS = { is: '', 'would-be': ', would be', 'would-go': ', would be gone' } as const;

/** One finding: sign and word, what would happen, why, what to do. Its title shows the pins, or the place on the map of the tray. */
export function FindingItem({ finding, build, tense }: FindingItemProps) {
  const workbench = useWorkbench();
  const id = findingId(finding);
  const chosen = useSession(({ selection }) => selection.kind === 'finding' && selection.id === id);
  const { title, reason, source } = wordsOf(finding, build);

  const openUnit = (connector: string) => {
    const unit = unitWith(build, connector);
    if (unit) workbench.session.getState().openDialog({ kind: 'unit', unit: unit.id, connector });
  };
  const show = () => {
    const { leads, pins } = finding;
    const standoff = placeInTray(finding);
    if (standoff !== undefined) {
      workbench.session.getState().select({ kind: 'on-tray', part: { kind: 'standoff', id: standoff } });
      workbench.session.getState().goTo('route');
      return;
    }
    workbench.session.getState().select({ kind: 'finding', id, pins, leads });
    const connectors = new Set(pins.map((pin) => pin.connector));
    const seats = build.seats.filter((seat) => leads.includes(seat.lead));
    if (connectors.size === 0) for (const seat of seats) connectors.add(seat.connector);
    const onUnits = [...connectors].filter((connector) => unitWith(build, connector));
    const onBoard = [...connectors].filter((connector) => !onUnits.includes(connector));
    if (onBoard.length > 0) workbench.canvas.current?.show(onBoard);
    // The drawing shows the board alone: what is only on a unit is shown from near by.
    else if (onUnits[0] !== undefined) openUnit(onUnits[0]);
  };

  return (
    <li className="finding" data-tense={tense} data-chosen={chosen || undefined}>
      <SeveritySign severity={finding.severity} />
      <div className="finding-words">
        <p className={`finding-severity severity-${finding.severity}`}>
          {SEVERITY_WORDS[finding.severity]}
          {TENSE_WORDS[tense]}
        </p>
        <h3>
          <Button kind="link" onPress={show}>
            {title}
          </Button>
        </h3>
        <p>{reason}</p>
        <p className="soft small finding-source">{source}</p>
        {tense === 'is' && <Remedies remedies={finding.remedies} />}
      </div>
    </li>
  );
}

function Remedies({ remedies }: { readonly remedies: readonly Remedy[] }) {
  const workbench = useWorkbench();
  if (remedies.length === 0) return null;
  return (
    <ul className="remedies">
      {keyed(remedies, ({ text }) => text).map(([key, { text, command }]) => (
        <li key={key}>
          {command ? (
            <Button kind="link" onPress={() => doCommand(workbench, command)}>
              {text}
            </Button>
          ) : (
            <span className="remedy-text">{text}</span>
          )}
        </li>
      ))}
    </ul>
  );
}
