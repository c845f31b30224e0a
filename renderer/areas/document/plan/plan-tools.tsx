import { SIDES, type Side } from '../../../../boards/document/connector';
import { FORM_FACTORS, type FormFactor, type Outline } from '../../../../boards/document/outline';
import {
  FORM_FACTOR_ENTRIES,
  formFactorOutline,
  resizedOutline,
  turnedOutline,
} from '../../../../boards/library/form-factors';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { LengthLine } from '../../../look/length-line';
import { PLAN_STEPS, type PlanStep } from '../../../store/session';
import { SIZE_BOUNDS } from '../../../words/length-words';
import { holesReplacedWords } from '../../../words/plan-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';

type Size = FormFactor | 'free';

const SIZES: readonly { readonly id: Size; readonly label: string }[] = [
  ...FORM_FACTOR_ENTRIES.map(({ id, name }) => ({ id, label: name })),
  { id: 'free', label: 'free size' },
];

const STEP_WORDS: Readonly<Record<PlanStep, string>> = {
  'tenth-mm': 'tenths of a mm',
  'tenth-inch': 'tenths of an inch',
  free: 'nothing',
};

const REARS = SIDES.map((id) => ({ id, label: `at the ${id}` }));

const STEPS = PLAN_STEPS.map((id) => ({ id, label: STEP_WORDS[id] }));

/** How large the board is, and what a dragged connector snaps to. */
export function PlanTools() {
  const workbench = useWorkbench();
  const { session } = workbench;
  const { outline } = useBuild().board;
  const step = useSession((state) => state.planStep);
  const { formFactor, rear = 'top', widthMm, depthMm, holes = [] } = outline;
  const size = (changed: { readonly widthMm?: number; readonly depthMm?: number }) =>
    doCommand(workbench, {
      name: 'outline-board',
      args: { outline: resizedOutline(outline, { widthMm, depthMm, ...changed }) },
    });
  const choose = (id: Size) => {
    const { formFactor: _, ...free } = outline;
    const known = FORM_FACTORS.find((each) => each === id);
    const done = doCommand(workbench, {
      name: 'outline-board',
      args: { outline: known ? formFactorOutline(known, rear) : free },
    });
    if (done && known && holesAreOwn(outline)) session.getState().tell(holesReplacedWords(holes.length));
  };
  // The holes of a form factor go along; of a free board only the side is said.
  const face = (side: Side) =>
    doCommand(workbench, {
      name: 'outline-board',
      args: { outline: formFactor ? turnedOutline(outline, side) : { ...outline, rear: side } },
    });
  return (
    <div className="plan-tools">
      <Choice label="Form factor" options={SIZES} chosen={formFactor ?? 'free'} onChoose={choose} />
      <LengthLine
        label="Width, mm"
        value={widthMm}
        bounds={SIZE_BOUNDS}
        onDone={(mm) => mm !== undefined && size({ widthMm: mm })}
      />
      <LengthLine
        label="Depth, mm"
        value={depthMm}
        bounds={SIZE_BOUNDS}
        onDone={(mm) => mm !== undefined && size({ depthMm: mm })}
      />
      <Choice label="Rear panel" options={REARS} chosen={rear} onChoose={face} />
      <Choice
        label="Snap to"
        options={STEPS}
        chosen={step}
        onChoose={(id) => session.getState().snapTo(id)}
      />
    </div>
  );
}

/** Whether somebody has set down holes that no form factor brings back. */
function holesAreOwn({ holes = [], formFactor, rear = 'top' }: Outline): boolean {
  if (formFactor === undefined) return holes.length > 0;
  const published = formFactorOutline(formFactor, rear).holes ?? [];
  return holes.some((hole) =>
    published.every((each) => each.id !== hole.id || each.xMm !== hole.xMm || each.yMm !== hole.yMm),
  );
}
