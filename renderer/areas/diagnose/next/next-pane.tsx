import { Maximize2, Printer } from 'lucide-react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs';
import { useAction } from '../../../actions/actions';
import { Button } from '../../../look/button';
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
  const shown = useShownTrial(diagnosis);
  const { build, lines, trials, next } = diagnosis;
  const said = diagnosis.lines.filter(({ current }) => current).length;
  return (
    <aside className="findings next-pane" aria-label="What to do" aria-busy={diagnosis.awaited.has('next')}>
      <Tabs className="shelf-tabs">
        <div className="panel-head">
          <TabList className="tab-list" aria-label="What to do">
            <Tab id="next" className="tab">
              Next trial
            </Tab>
            <Tab id="log" className="tab">
              Log ({said})
            </Tab>
          </TabList>
        </div>
        <TabPanel id="next" className="tab-panel next-scroll">
          {diagnosis.believed?.worksNow && <WorksNow />}
          {diagnosis.stops.length > 0 ? (
            <p className="next-none">
              No trial: something burned, smoked, sparked or gave a shock. Do what stands at the top.
            </p>
          ) : (
            <>
              {shown ? (
                <TrialCard build={build} next={next} shown={shown} />
              ) : (
                <NoTrial diagnosis={diagnosis} />
              )}
              <OtherTrials build={build} lines={lines} trials={trials} next={next} shown={shown?.trial.id} />
            </>
          )}
        </TabPanel>
        <TabPanel id="log" className="tab-panel next-scroll">
          <LogPanel diagnosis={diagnosis} />
        </TabPanel>
      </Tabs>
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

function NoTrial({ diagnosis }: { readonly diagnosis: Diagnosis }) {
  // Right after a stop was taken back the trials are not worked out again yet.
  if (diagnosis.awaited.has('next')) return null;
  return (
    <p className="next-none">
      No trial that may be made would tell more. Look again at what is noticed, or ask somebody qualified.
    </p>
  );
}
