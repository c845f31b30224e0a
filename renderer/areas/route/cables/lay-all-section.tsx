import { X } from 'lucide-react';
import { useEffect, useRef } from 'react';
import type { Build } from '../../../../boards/document/build';
import { type AsLaid, asLaid } from '../../../../boards/routing/laid/as-laid';
import { runName } from '../../../../boards/routing/laid/end-names';
import {
  type RouteDifference,
  routeDifferences,
  stillAnswers,
  takingRoutesOver,
} from '../../../../boards/routing/laid/route-differences';
import type { AllRoutes } from '../../../../boards/routing/search/all-routes';
import { doCommand } from '../../../do-command';
import { Button, IconButton } from '../../../look/button';
import {
  layingFoundWords,
  layingProgressWords,
  NO_LAYING_WORDS,
  routeDifferenceWords,
} from '../../../words/cable-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { refOf } from './cable-moves';
import { type LayingRun, useLaying } from './use-laying';

/** All cables laid together, beside how they lie: difference by difference, or all in one step. */
export function LayAllSection() {
  const open = useSession(({ layingOpen }) => layingOpen);
  const build = useBuild();
  const laid = asLaid(build);
  return open && laid !== undefined ? <LayAll build={build} laid={laid} /> : null;
}

function LayAll({ build, laid }: { readonly build: Build; readonly laid: AsLaid }) {
  const { session } = useWorkbench();
  const { run, layAnew, stop } = useLaying();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const found = run.found && stillAnswers(laid, run.found) ? run.found.routes : null;
  return (
    <section className="route-section" aria-labelledby="route-lay-all">
      <div className="route-section-head">
        <h2 id="route-lay-all" ref={heading} tabIndex={-1}>
          All cables
        </h2>
        <IconButton
          label="Close all cables"
          icon={<X size={18} aria-hidden="true" />}
          onPress={() => session.getState().openLaying(false)}
        />
      </div>
      <Status build={build} run={run} found={found} onStop={stop} onAnew={layAnew} />
      {found && <Differences build={build} found={found} around={heading} />}
    </section>
  );
}

interface StatusProps {
  readonly build: Build;
  readonly run: LayingRun;
  readonly found: AllRoutes | null;
  readonly onStop: () => void;
  readonly onAnew: () => void;
}

function Status({ build, run, found, onStop, onAnew }: StatusProps) {
  const { session } = useWorkbench();
  const working = run.stage === 'working';
  const words = found ? layingFoundWords(build, found) : working ? '' : NO_LAYING_WORDS[run.stage];
  useEffect(() => {
    if (words !== '') session.getState().announce(words);
  }, [session, words]);
  return (
    <div className="laying-status">
      {working ? (
        <>
          <p>{layingProgressWords(run.progress)}</p>
          <Button onPress={onStop}>Stop</Button>
        </>
      ) : (
        <>
          <p>{words}</p>
          {found === null && (
            <Button kind="main" onPress={onAnew}>
              Lay all anew
            </Button>
          )}
        </>
      )}
    </div>
  );
}

interface DifferencesProps {
  readonly build: Build;
  readonly found: AllRoutes;
  /** Takes the focus when the last difference is gone. */
  readonly around: { readonly current: HTMLElement | null };
}

function Differences({ build, found, around }: DifferencesProps) {
  const workbench = useWorkbench();
  const differences = routeDifferences(build, found);
  const apply = (some: readonly RouteDifference[]) => {
    doCommand(workbench, { name: 'lay-runs', args: takingRoutesOver(some) });
    around.current?.focus();
  };
  if (differences.length === 0) return <p>Every cable lies so already.</p>;
  return (
    <>
      <ul className="other-ways" aria-label="Differences from how the cables lie">
        {differences.map((difference) => {
          const words = routeDifferenceWords(build, difference);
          const { run } = difference;
          const name = runName(build, run.lead, run.run);
          return (
            <li key={run.id}>
              <div>
                <Button
                  kind="link"
                  onPress={() => workbench.session.getState().select({ kind: 'plug', plug: refOf(run) })}
                >
                  {name}
                </Button>
                <p className="soft small">{words}</p>
              </div>
              <Button label={`Apply this: ${name}, ${words}`} onPress={() => apply([difference])}>
                Apply
              </Button>
            </li>
          );
        })}
      </ul>
      <div>
        <Button kind="main" onPress={() => apply(differences)}>
          Apply all
        </Button>
      </div>
    </>
  );
}
