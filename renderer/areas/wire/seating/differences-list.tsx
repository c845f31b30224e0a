import { type RefObject, useEffect, useRef } from 'react';
import { samePlug } from '../../../../boards/document/lookup';
import { type Difference, takingOver } from '../../../../boards/planner/differences';
import { differenceWords } from '../../../../boards/planner/words';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { Tick } from '../../../look/tick';
import { chosenPlug } from '../../../store/session';
import { useBuild, useSession, useWorkbench } from '../../../workbench';

interface DifferencesListProps {
  readonly differences: readonly Difference[];
  readonly disabled: boolean;
  /** Takes the focus when the last difference is gone. */
  readonly around: RefObject<HTMLElement | null>;
}

/** What the plan has otherwise, plug by plug: to be shown on the drawing, applied, or kept as it is. */
export function DifferencesList({ differences, disabled, around }: DifferencesListProps) {
  const list = useRef<HTMLUListElement>(null);
  const applied = useRef<number | null>(null);

  // The button that was pressed is gone; the next difference has taken its place.
  // biome-ignore lint/correctness/useExhaustiveDependencies: other differences are the sign to look
  useEffect(() => {
    if (applied.current === null) return;
    const titles = list.current?.querySelectorAll<HTMLElement>('h3 > button') ?? [];
    (titles[Math.min(applied.current, titles.length - 1)] ?? around.current)?.focus();
    applied.current = null;
  }, [differences]);

  return (
    <ul ref={list} className="differences" aria-label="Differences from your wiring">
      {differences.map((difference, at) => (
        <DifferenceItem
          key={`${difference.plug.lead} ${difference.plug.plug}`}
          difference={difference}
          disabled={disabled}
          onApplied={() => {
            applied.current = at;
          }}
        />
      ))}
    </ul>
  );
}

interface DifferenceItemProps {
  readonly difference: Difference;
  readonly disabled: boolean;
  readonly onApplied: () => void;
}

function DifferenceItem({ difference, disabled, onApplied }: DifferenceItemProps) {
  const workbench = useWorkbench();
  const build = useBuild();
  const { plug, now, planned } = difference;
  const chosen = useSession(({ selection }) => {
    const other = chosenPlug(selection);
    return other !== undefined && samePlug(other, plug);
  });
  const words = differenceWords(build, difference);

  const show = () => {
    workbench.session.getState().showPlanned(plug, planned ?? null);
    const connectors = [now, planned].flatMap((seat) => seat?.connector ?? []);
    workbench.canvas.current?.show([...new Set(connectors)]);
  };
  const apply = () => {
    onApplied();
    doCommand(workbench, takingOver([difference]));
  };

  return (
    <li className="difference" data-chosen={chosen || undefined}>
      <h3>
        <Button kind="link" onPress={show}>
          {words}
        </Button>
      </h3>
      <div className="difference-doings">
        <Button label={`Apply this: ${words}`} disabled={disabled} onPress={apply}>
          Apply this
        </Button>
        {now && (
          <Tick on={false} onChange={() => workbench.session.getState().keep(plug, true)}>
            Keep where it is
          </Tick>
        )}
      </div>
    </li>
  );
}
