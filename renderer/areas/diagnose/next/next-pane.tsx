import { Maximize2, Printer } from 'lucide-react';
import { RISK_WORDS } from '../../../../boards/diagnosis/trials/words';
import { useAction } from '../../../actions/actions';
import { Button } from '../../../look/button';
import { ShelfTabs } from '../../../look/shelf-tabs';
import { LogPanel } from '../log/log-panel';
import type { Diagnosis } from '../use-diagnosis';
import { OtherTrials } from './other-trials';
import { TrialCard } from './trial-card';
import { useShownTrial } from './use-shown-trial';
import { WorksNow } from './works-now';

/** What to do next, and what was done. */
export function NextPane({ diagnosis }: { readonly diagnosis: Diagnosis }) {
  const large = useAction('view.large-steps');
  const print = useAction('file.print-trouble');
  const said = diagnosis.lines.filter(({ current }) => current).length;
  return (
    <aside className="findings next-pane" aria-label="What to do" aria-busy={diagnosis.awaited.has('next')}>
      <ShelfTabs
        label="What to do"
        tabs={[
          { id: 'next', name: 'Next trial', shown: <Next diagnosis={diagnosis} /> },
          { id: 'log', name: `Log (${said})`, shown: <LogPanel diagnosis={diagnosis} /> },
        ]}
        panelClass="next-scroll"
      />
      <div className="next-foot">
        <Button onPress={() => large.run()}>
          <Maximize2 size={16} aria-hidden="true" />
          Large letters
          <kbd className="keys">F9</kbd>
        </Button>
        <Button onPress={() => print.run()}>
          <Printer size={16} aria-hidden="true" />
          Print…
        </Button>
      </div>
    </aside>
  );
}

function Next({ diagnosis }: { readonly diagnosis: Diagnosis }) {
  const shown = useShownTrial(diagnosis);
  const { build, lines, trials, next, believed, stops } = diagnosis;
  return (
    <>
      {believed?.worksNow && <WorksNow />}
      {stops.length > 0 ? (
        <p className="next-none">
          No trial: something burned, smoked, sparked or gave a shock, or is burnt. Do what stands at the top.
        </p>
      ) : (
        <>
          {next?.held && (
            <p className="next-held" role="note" aria-label="Held back">
              {RISK_WORDS[next.held]}
            </p>
          )}
          {shown ? <TrialCard build={build} next={next} shown={shown} /> : <NoTrial diagnosis={diagnosis} />}
          <OtherTrials build={build} lines={lines} trials={trials} next={next} shown={shown?.trial.id} />
        </>
      )}
    </>
  );
}

function NoTrial({ diagnosis }: { readonly diagnosis: Diagnosis }) {
  // Right after a stop was taken back the trials are not worked out again yet.
  if (diagnosis.awaited.has('next')) return null;
  return (
    <p className="next-none">
      No trial that may be made would tell more. Look again at what is noticed, or ask somebody qualified.
    </p>
  );
}
