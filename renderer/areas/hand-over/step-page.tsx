import {
  ArrowLeft,
  CaretsToAxisDashedVertical,
  Check,
  Maximize2,
  Printer,
  RotateCwSquare,
  Tag,
} from 'lucide-react';
import { analyse } from '../../../boards/analyse';
import { stepWords } from '../../../boards/handover/steps/step-words';
import { useAction } from '../../actions/actions';
import { Button, IconButton } from '../../look/button';
import { SeveritySign } from '../../look/severity-sign';
import { useBuild, useWorkbench } from '../../workbench';
import { FoundHere } from './found-here';
import { StepBody } from './step-body';
import { stepBeside, useSteps, useTick } from './use-steps';
import { warningOf } from './warning';

/** The chosen step: what to do, how it looks, what to mind, and its tick. */
export function StepPage() {
  const { session } = useWorkbench();
  const all = useSteps();
  const { build, steps, done, shown } = all;
  const tick = useTick();
  const large = useAction('view.large-steps');
  const print = useAction('file.print-bench-sheet');
  const labels = useAction('file.print-labels');
  const { title, cautions } = stepWords(build, shown);
  const isDone = done.has(shown.id);
  const before = stepBeside(all, -1);
  const after = stepBeside(all, 1);
  const go = (id: string | undefined) => {
    if (id !== undefined) session.getState().showStep(id);
  };
  return (
    <main className="step-page" aria-label="Step">
      <Warning />
      <div className="step-head">
        <p className="soft small">
          Step {steps.indexOf(shown) + 1} of {steps.length}
          {isDone ? ', done' : ''}
        </p>
        <div className="step-head-doings">
          <Button onPress={() => print.run()}>
            <Printer size={16} aria-hidden="true" />
            {print.label}
          </Button>
          <Button onPress={() => labels.run()}>
            <Tag size={16} aria-hidden="true" />
            {labels.label}
          </Button>
          <Button onPress={() => large.run()}>
            <Maximize2 size={16} aria-hidden="true" />
            Large letters
            <kbd className="keys">F9</kbd>
          </Button>
        </div>
      </div>
      <div className="step-scroll">
        <h2 className="step-title">{title}</h2>
        {cautions.length > 0 && (
          <ul className="step-cautions" aria-label="Mind">
            {cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        )}
        <FoundHere build={build} step={shown} />
        <StepBody build={build} step={shown} tools={<LyingTools />} />
        <Nothing />
      </div>
      <div className="step-doings">
        <Button disabled={before === undefined} onPress={() => go(before?.id)}>
          <ArrowLeft size={16} aria-hidden="true" />
          Back
        </Button>
        {isDone && <Button onPress={() => tick(shown, false)}>Take the tick away</Button>}
        {!isDone && (
          <Button
            kind="main"
            onPress={() => {
              tick(shown, true);
              go(after?.id);
            }}
          >
            <Check size={16} aria-hidden="true" />
            {after ? 'Done, next step' : 'Done'}
          </Button>
        )}
        {isDone && (
          <Button kind="main" disabled={after === undefined} onPress={() => go(after?.id)}>
            Next step
          </Button>
        )}
      </div>
    </main>
  );
}

function Warning() {
  const { session } = useWorkbench();
  const build = useBuild();
  const warning = warningOf(analyse(build).findings);
  // Where no plug is seated, that is said in place of what follows from it.
  if (warning === null || build.seats.length === 0) return null;
  return (
    <div className="step-warning" role="note">
      <SeveritySign severity={warning.severity} spoken />
      <p>{warning.words}</p>
      <Button onPress={() => session.getState().goTo('wire')}>Go to Wire</Button>
    </div>
  );
}

/** What is missing for steps with plugs, where there is none. */
function Nothing() {
  const { session } = useWorkbench();
  const build = useBuild();
  if (build.seats.length > 0) return null;
  const leads = build.case.leads.length + build.extras.length;
  return (
    <div className="step-nothing">
      <p>
        {leads === 0
          ? 'This build has no leads yet, so no plug is among the steps. Add the leads of the case first.'
          : 'No plug is seated yet, so none is among the steps. Seat the leads on the board first.'}
      </p>
      <Button onPress={() => session.getState().goTo(leads === 0 ? 'document' : 'wire')}>
        {leads === 0 ? 'Go to Document' : 'Go to Wire'}
      </Button>
    </div>
  );
}

function LyingTools() {
  const turn = useAction('view.turn');
  const mirror = useAction('view.mirror');
  return (
    <>
      <IconButton
        label={turn.label}
        icon={<RotateCwSquare size={20} aria-hidden="true" />}
        onPress={() => turn.run()}
      />
      <IconButton
        label={mirror.label}
        icon={<CaretsToAxisDashedVertical size={20} aria-hidden="true" />}
        onPress={() => mirror.run()}
      />
    </>
  );
}
