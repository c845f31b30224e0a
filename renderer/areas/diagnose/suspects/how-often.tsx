import type { CauseId } from '../../../../boards/diagnosis/faults/causes';
import { factorOf } from '../../../../boards/diagnosis/faults/priors';
import type { Build } from '../../../../boards/document/build';
import { Choice } from '../../../look/choice';
import { stepsWith, USUAL_SHARES } from '../../../words/how-often-words';
import { useWorkbench } from '../../../workbench';
import { weighCause } from '../doings';

interface HowOftenProps {
  readonly build: Build;
  readonly cause: CauseId;
}

/** How often the shown cause is met at this bench: whoever knows better than what is usual says so here. */
export function HowOften({ build, cause }: HowOftenProps) {
  const workbench = useWorkbench();
  const factor = factorOf(build, cause);
  return (
    <div className="how-often">
      <Choice
        label="How often here"
        options={stepsWith(factor).map((step) => ({ id: String(step.factor), label: step.words }))}
        chosen={String(factor)}
        onChoose={(id) => weighCause(workbench, cause, id === '1' ? null : Number(id))}
      />
      <p className="soft small">{USUAL_SHARES}</p>
    </div>
  );
}
