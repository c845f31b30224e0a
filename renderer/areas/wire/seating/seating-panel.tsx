import { X } from 'lucide-react';
import { useEffect, useMemo, useRef } from 'react';
import { differencesTo, takingOver } from '../../../../boards/planner/differences';
import { doCommand } from '../../../do-command';
import { Button, IconButton } from '../../../look/button';
import { differencesWords } from '../../../words/seating-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { DifferencesList } from './differences-list';
import { KeptList } from './kept-list';
import { foundFor } from './seating-run';
import { SeatingStatus } from './seating-status';
import { UnservedList } from './unserved-list';
import { useSeating } from './use-seating';
import './seating.css';

/** The best seating beside the wiring: what is proved, what has no place and why, and difference by difference. */
export function SeatingPanel() {
  const workbench = useWorkbench();
  const build = useBuild();
  const kept = useSession((session) => session.kept);
  const inHand = useSession((session) => session.placing !== null);
  const { run, planAnew, stop } = useSeating(kept);
  const panel = useRef<HTMLElement>(null);
  const found = foundFor(run, build);
  const differences = useMemo(() => (found ? differencesTo(build, found.plan.seats) : []), [build, found]);
  const busy = run.stage === 'working' && run.progress?.stage !== 'remedies';
  const close = () => workbench.session.getState().openSeating(false);

  useEffect(() => panel.current?.focus(), []);

  return (
    <aside
      ref={panel}
      className="findings seating"
      aria-label="Best seating"
      hidden={inHand}
      tabIndex={-1}
      onKeyDown={(event) => {
        if (event.key === 'Escape') close();
      }}
    >
      <header className="panel-head seating-head">
        <h2>Best seating</h2>
        <IconButton
          label="Close the best seating"
          keys="Escape"
          icon={<X size={18} aria-hidden="true" />}
          onPress={close}
        />
      </header>
      <SeatingStatus
        run={run}
        found={found}
        differences={differences.length}
        onAnew={planAnew}
        onStop={stop}
      />
      <div className="seating-body">
        {found && <UnservedList found={found} run={run} onRemedy={planAnew} />}
        {differences.length > 0 && (
          <DifferencesList differences={differences} disabled={busy} around={panel} />
        )}
        <KeptList kept={kept} />
      </div>
      {found && differences.length > 0 && (
        <footer className="seating-foot">
          <p className="soft small">{differencesWords(differences.length)}</p>
          <Button
            kind="main"
            disabled={busy}
            onPress={() => {
              if (doCommand(workbench, takingOver(differences))) panel.current?.focus();
            }}
          >
            Apply all
          </Button>
        </footer>
      )}
    </aside>
  );
}
