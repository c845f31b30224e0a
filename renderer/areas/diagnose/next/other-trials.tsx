import { memo, useState } from 'react';
import { resultName, trialWordsIn } from '../../../../boards/diagnosis/log/log-words';
import { tellingLines } from '../../../../boards/diagnosis/log/read-log';
import type { ReasonedTrial } from '../../../../boards/diagnosis/log/reasoned-trials';
import type { Trial } from '../../../../boards/diagnosis/trials/trial';
import { RISK_WORDS } from '../../../../boards/diagnosis/trials/words';
import { Button } from '../../../look/button';
import { effortWords, gainWords, TELLS_NOTHING, waitsWords } from '../../../words/trouble-words';
import { useWorkbench } from '../../../workbench';
import type { Diagnosis } from '../use-diagnosis';

/** So many stand in the list at first: what comes after tells less for its work. */
const FIRST = 6;

interface OtherTrialsProps extends Pick<Diagnosis, 'build' | 'lines' | 'trials' | 'next'> {
  readonly shown: string | undefined;
}

/** What else may be tried, the best first, and what is held back, with the reason. */
export const OtherTrials = memo(function OtherTrials({
  build,
  lines,
  trials,
  next,
  shown,
}: OtherTrialsProps) {
  const { session } = useWorkbench();
  const [all, setAll] = useState(false);
  if (next === null) return null;
  const reasoned = new Map(next.trials.map((each) => [each.trial, each]));
  const made = new Set(
    tellingLines(lines).flatMap(({ told }) => (told.kind === 'tried' ? [told.tried.trial.id] : [])),
  );
  const open = next.trials.flatMap((each): readonly (readonly [Trial, ReasonedTrial])[] => {
    const trial = trials.find(({ id }) => id === each.trial);
    return trial && each.risk === undefined && each.trial !== shown ? [[trial, each]] : [];
  });
  const held = trials.filter(({ id }) => !made.has(id) && reasoned.get(id)?.risk !== undefined);
  // What follows on another trial is listed once that was made; of the leads that go back one line says it.
  const idle = trials.filter(({ id, after }) => !made.has(id) && !reasoned.has(id) && after === undefined);
  const back = trials.filter(({ id, lead }) => !made.has(id) && !reasoned.has(id) && lead !== undefined);
  const waits = (trial: Trial) => whyNot({ build, trials, lines }, trial);
  return (
    <section className="other-trials" aria-label="Other trials">
      <h3>Other trials</h3>
      <ul>
        {(all ? open : open.slice(0, FIRST)).map(([trial, { gainBits, effort }]) => (
          <li key={trial.id}>
            <Button kind="link" onPress={() => session.getState().showTrial(trial.id)}>
              {trialWordsIn(build, trial).title}
            </Button>
            <span className="soft small">
              {gainWords(gainBits)}, {effortWords(effort)}
            </span>
          </li>
        ))}
        {held.map((trial) => (
          <li key={trial.id} className="other-held">
            <span>{trialWordsIn(build, trial).title}</span>
            <span className="small">{RISK_WORDS[reasoned.get(trial.id)?.risk ?? 'may-burn']}</span>
          </li>
        ))}
        {(all ? idle : []).map((trial) => (
          <li key={trial.id} className="other-idle">
            <span className="soft">{trialWordsIn(build, trial).title}</span>
            <span className="soft small">{waits(trial)}</span>
          </li>
        ))}
        {all && back[0] && (
          <li className="other-idle">
            <span className="soft">Put one lead back at a time</span>
            <span className="soft small">{waits(back[0])}</span>
          </li>
        )}
      </ul>
      {(open.length > FIRST || idle.length > 0) && (
        <Button kind="link" onPress={() => setAll(!all)}>
          {all ? 'Only the best of them' : `All ${open.length + held.length + idle.length} other trials`}
        </Button>
      )}
    </section>
  );
});

/** Why a trial is not among those to be made. */
function whyNot(
  { build, trials, lines }: Pick<Diagnosis, 'build' | 'trials' | 'lines'>,
  { after }: Trial,
): string {
  const before = after && trials.find(({ id }) => id === after.trial);
  const isMet = tellingLines(lines).some(
    ({ told }) =>
      told.kind === 'tried' &&
      told.tried.trial.id === after?.trial &&
      after.results.includes(told.tried.result),
  );
  const [awaited] = after?.results ?? [];
  return before && awaited && !isMet
    ? waitsWords(trialWordsIn(build, before).title, resultName(awaited))
    : TELLS_NOTHING;
}
