import { useSession, useWorkbench } from '../../workbench';
import { LargeTrial } from './large/large-trial';
import { NextPane } from './next/next-pane';
import { StopBanner } from './stop-banner';
import { SuspectsPane } from './suspects/suspects-pane';
import { SymptomShelf } from './symptoms/symptom-shelf';
import { useDiagnosis } from './use-diagnosis';
import '../wire/shelf.css';
import '../wire/wire.css';
import '../wire/findings.css';
import '../hand-over/hand-over.css';
import './diagnose.css';

/** A machine that does not start: what is noticed, what it may be, what to do next. A stop stands over all of it. */
export function DiagnoseArea() {
  const { session } = useWorkbench();
  const diagnosis = useDiagnosis();
  const large = useSession(({ dialogs }) => dialogs.find(({ kind }) => kind === 'large-trial'));
  const { stops } = diagnosis;
  return (
    <div className="area diagnose-area" data-stop={stops.length > 0 || undefined}>
      {stops.length > 0 && <StopBanner stops={stops} />}
      <SymptomShelf diagnosis={diagnosis} />
      <SuspectsPane diagnosis={diagnosis} />
      <NextPane diagnosis={diagnosis} />
      {large && <LargeTrial diagnosis={diagnosis} onClose={() => session.getState().closeDialog(large)} />}
    </div>
  );
}
