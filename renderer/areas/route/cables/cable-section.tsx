import { X } from 'lucide-react';
import { useMemo } from 'react';
import type { Build } from '../../../../boards/document/build';
import { leadOf, samePlug } from '../../../../boards/document/lookup';
import { type AsLaid, asLaid, type LaidRun } from '../../../../boards/routing/laid/as-laid';
import { cableRemarks, cableRemarkWords } from '../../../../boards/routing/laid/cable-remarks';
import { endNames, runName } from '../../../../boards/routing/laid/end-names';
import { waysFor } from '../../../../boards/routing/laid/other-ways';
import { remediesFor } from '../../../../boards/routing/laid/remedies';
import { remedyWords, sightWords } from '../../../../boards/routing/laid/remedy-words';
import { verdictOf } from '../../../../boards/routing/laid/run-verdict';
import {
  notLaidWords,
  passageWords,
  stepWords,
  verdictWords,
} from '../../../../boards/routing/laid/run-words';
import { wayStepsOf } from '../../../../boards/routing/laid/way-steps';
import { Button, IconButton } from '../../../look/button';
import { SeveritySign } from '../../../look/severity-sign';
import { chosenPlug } from '../../../store/session';
import { verdictSeverity, wayWords } from '../../../words/cable-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { CABLE_HEADING } from './cable-heading';
import { beginWay, pin, refOf, takeOff, takeWay } from './cable-moves';
import { FirstMeasures } from './first-measures';
import { MeasureForm } from './measure-form';
import { WayEditor } from './way-editor';

/** The cable that is chosen: its ends, how it stands, what would help, its way and other ways, its measures. */
export function CableSection() {
  const { session } = useWorkbench();
  const build = useBuild();
  const plug = useSession(({ selection }) => chosenPlug(selection));
  const lead = plug && leadOf(build, plug.lead);
  const laid = asLaid(build);
  if (plug === undefined || lead === undefined || laid === undefined) return null;
  const runs = laid.runs.filter((each) => each.lead.id === lead.id);
  const run = runs.find((each) => samePlug(refOf(each), plug)) ?? runs[0];
  return (
    <section className="route-section" aria-labelledby={CABLE_HEADING}>
      <div className="route-section-head">
        <h2 id={CABLE_HEADING} tabIndex={-1}>
          {run ? runName(build, lead, run.run) : lead.name}
        </h2>
        <IconButton
          label="Choose nothing"
          icon={<X size={18} aria-hidden="true" />}
          onPress={() => session.getState().select({ kind: 'nothing' })}
        />
      </div>
      {run ? (
        <>
          <RunFacts build={build} laid={laid} run={run} />
          <MeasureForm key={lead.id} lead={lead} />
        </>
      ) : (
        <FirstMeasures key={lead.id} lead={lead} />
      )}
    </section>
  );
}

interface RunProps {
  readonly build: Build;
  readonly laid: AsLaid;
  readonly run: LaidRun;
}

function RunFacts({ build, laid, run }: RunProps) {
  const draft = useSession(({ wayDraft }) => wayDraft);
  const verdict = verdictOf(laid, run);
  const severity = verdictSeverity(verdict);
  const [near, far] = endNames(build, run.lead, run.run);
  return (
    <>
      <p className="soft">
        From {near} to {far}
      </p>
      <p className="cable-state cable-state-large">
        {severity && <SeveritySign severity={severity} spoken />}
        <strong className={severity ? `severity-${severity}` : ''}>{verdictWords(build, verdict)}</strong>
        {run.state.kind === 'laid' && run.state.pinned && <span className="soft">, pinned</span>}
      </p>
      {verdict.kind === 'barred' && <p>For {passageWords(build, verdict.opening, verdict.problem)}.</p>}
      {verdict.kind === 'not-laid' && <p>{notLaidWords(build, run.lead, verdict.problem)}</p>}
      {cableRemarks(build, laid, run).map((remark) => (
        <p key={remark.code} className="soft small">
          {cableRemarkWords(remark)}
        </p>
      ))}
      {draft && samePlug(draft.plug, refOf(run)) ? (
        <WayEditor build={build} laid={laid} run={run} />
      ) : (
        run.cable && <Ways build={build} laid={laid} run={run} />
      )}
    </>
  );
}

function Ways({ build, laid, run }: RunProps) {
  const workbench = useWorkbench();
  const { laying } = laid;
  const { cable, state } = run;
  const ways = useMemo(() => (cable ? waysFor(laying, cable) : []), [laying, cable]);
  const [best] = ways;
  const now = state.kind === 'laid' ? state.route : undefined;
  const others = ways.filter((way) => way.paths.join(' ') !== now?.paths.join(' '));
  return (
    <>
      <div className="cable-doings">
        <Button
          kind={now === undefined ? 'main' : 'plain'}
          disabled={best === undefined}
          onPress={() => best && takeWay(workbench, run, best)}
        >
          Find a way
        </Button>
        <Button onPress={() => beginWay(workbench, run)}>Choose place by place</Button>
        {state.kind === 'laid' && (
          <Button onPress={() => pin(workbench, run, !state.pinned)}>
            {state.pinned ? 'Let the way go' : 'Pin the way'}
          </Button>
        )}
        {(now !== undefined || (state.kind === 'open' && state.broken)) && (
          <Button onPress={() => takeOff(workbench, run)}>Take the way off</Button>
        )}
      </div>
      {best === undefined && (
        <p>Nothing in the tray leads from one end to the other. Draw paths between them.</p>
      )}
      <Helps build={build} laid={laid} run={run} />
      {now && cable && (
        <div className="cable-part">
          <h3>Its way</h3>
          <p className="soft small">{sightWords(now)}</p>
          <ol className="way-steps">
            {wayStepsOf(laying, cable, now).map((step) => (
              <li key={step.kind === 'along' ? step.path : `through ${step.opening}`}>
                {stepWords(build, step)}
              </li>
            ))}
          </ol>
        </div>
      )}
      {others.length > 0 && (
        <div className="cable-part">
          <h3>{now ? 'Other ways' : 'Ways'}</h3>
          <ul className="other-ways">
            {others.map((way) => {
              const words = wayWords(build, way);
              return (
                <li key={way.paths.join(' ')}>
                  <span>{words}</span>
                  <Button label={`Take this way: ${words}`} onPress={() => takeWay(workbench, run, way)}>
                    Take
                  </Button>
                </li>
              );
            })}
          </ul>
        </div>
      )}
    </>
  );
}

/** What would help a cable that does not reach, or not by its way. Every line was tried. */
function Helps({ build, laid, run }: RunProps) {
  const workbench = useWorkbench();
  const { laying } = laid;
  const { cable, state } = run;
  const bad =
    state.kind === 'laid' ? state.route.spareMm < 0 || state.barred.length > 0 : state.kind === 'open';
  const remedies = useMemo(() => {
    if (!bad || cable === undefined) return [];
    const taken = new Set((build.units ?? []).flatMap(({ at }) => at ?? []));
    return remediesFor(laying, cable, taken);
  }, [bad, build, laying, cable]);
  const shown = remedies.filter(({ kind }) => state.kind === 'laid' || kind !== 'other-way');
  if (shown.length === 0) return null;
  return (
    <div className="cable-part">
      <h3>What would help</h3>
      <ul className="remedies cable-helps">
        {shown.map((remedy) => {
          const words = remedyWords(build, remedy);
          return (
            <li key={remedy.kind}>
              {remedy.kind === 'other-way' ? (
                <Button kind="link" onPress={() => takeWay(workbench, run, remedy.route)}>
                  {words}
                </Button>
              ) : (
                <span>{words}</span>
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
}
