import type { FanRating } from '../../../../boards/document/rating';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { useWorkbench } from '../../../workbench';
import { Figure } from '../figure';
import type { SubjectOf } from './figure-entries';

/** A fan by its label: nothing is kept until a current was read. */
export function FanFigures({ lead, part, fan, usual }: SubjectOf<'fan'>) {
  const workbench = useWorkbench();
  const put = (next: FanRating | null) =>
    doCommand(workbench, { name: 'rate-fan', args: { lead, part, fan: next } });
  const of = fan ?? usual;
  return (
    <>
      <div className="route-pair">
        <Figure
          label="Running, A"
          value={fan?.runningAmps}
          onDone={(runningAmps) =>
            put(
              runningAmps === undefined
                ? null
                : { ...of, runningAmps, startAmps: Math.max(of.startAmps, runningAmps) },
            )
          }
        />
        <Figure
          label="At the start, A"
          value={fan?.startAmps}
          onDone={(startAmps) => put(startAmps === undefined ? null : { ...of, startAmps })}
        />
      </div>
      <Choice
        label="Cools"
        options={[
          { id: 'processor', label: 'the processor' },
          { id: 'case', label: 'the case' },
        ]}
        chosen={of.cools}
        onChoose={(cools) => put({ ...of, cools })}
      />
    </>
  );
}
