import { memo, useEffect, useRef } from 'react';
import { percent } from '../../../../boards/base/percent';
import { CAUSES } from '../../../../boards/diagnosis/faults/causes';
import { resultName, trialWordsIn } from '../../../../boards/diagnosis/log/log-words';
import { trialCautions } from '../../../../boards/diagnosis/trials/cautions';
import { resultWords } from '../../../../boards/diagnosis/trials/words';
import { Button } from '../../../look/button';
import { keyed } from '../../../look/keyed';
import { effortWords, gainWords } from '../../../words/trouble-words';
import { useWorkbench } from '../../../workbench';
import { noteResult } from '../doings';
import type { Diagnosis } from '../use-diagnosis';
import type { ShownTrial } from './use-shown-trial';

interface TrialCardProps extends Pick<Diagnosis, 'build' | 'next'> {
  readonly shown: ShownTrial;
}

/** One trial: how it is made, what to mind, and what each result would say. */
export const TrialCard = memo(function TrialCard({
  build,
  next,
  shown: { trial, reasoned },
}: TrialCardProps) {
  const workbench = useWorkbench();
  const { title, steps } = trialWordsIn(build, trial);
  const card = useInSight(trial.id);
  const isBest = next?.trials[0]?.trial === trial.id;
  return (
    <section ref={card} className="trial" aria-label={title} tabIndex={-1}>
      <p className="soft small">
        {isBest ? 'Most telling for its work' : 'Chosen by you'}: {gainWords(reasoned.gainBits)},{' '}
        {effortWords(reasoned.effort)}, mains {trial.powered ? 'on' : 'off'}
      </p>
      <h3 className="trial-title">{title}</h3>
      <ul className="step-cautions" aria-label="Mind">
        {trialCautions(trial).map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <ol className="trial-steps" aria-label="Steps">
        {keyed(steps).map(([key, step]) => (
          <li key={key}>{step}</li>
        ))}
      </ol>
      <h4 className="trial-ask">What came of it?</h4>
      <ul className="trial-results" aria-label="Results">
        {reasoned.results.map(({ result, chance, believed }) => (
          <li key={result}>
            <Button onPress={() => noteResult(workbench, trial, result)}>{resultName(result)}</Button>
            <p className="small">
              {resultWords(result, trial)}{' '}
              <span className="soft">
                Expected in {percent(chance)};{' '}
                {believed
                  ? `then likeliest: ${CAUSES[believed.cause]}, ${percent(believed.chance)}.`
                  : 'then none of these is likeliest.'}
              </span>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
});

/**
 * Begins another trial at its head. The button that brought it is gone then, so the focus comes along, unless it is
 * elsewhere in the area.
 */
function useInSight(trial: string) {
  const card = useRef<HTMLElement>(null);
  const before = useRef(trial);
  useEffect(() => {
    if (before.current === trial || !card.current) return;
    before.current = trial;
    const scroller = card.current.closest('.next-scroll');
    scroller?.scrollTo({ top: 0 });
    const { activeElement, body } = document;
    if (activeElement === body || scroller?.contains(activeElement))
      card.current.focus({ preventScroll: true });
  }, [trial]);
  return card;
}
