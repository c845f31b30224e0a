import { Button } from 'react-aria-components/Button';
import { Heading } from 'react-aria-components/Heading';
import { resultName, trialWordsIn } from '../../../../boards/diagnosis/log/log-words';
import { trialCautions } from '../../../../boards/diagnosis/trials/cautions';
import { RISK_WORDS, WORKS_NOW } from '../../../../boards/diagnosis/trials/words';
import { keyed } from '../../../look/keyed';
import { useWorkbench } from '../../../workbench';
import { noteResult } from '../doings';
import type { ShownTrial } from '../next/use-shown-trial';
import type { Diagnosis } from '../use-diagnosis';
import { LargePane } from './large-pane';

interface LargeResultsProps {
  readonly diagnosis: Diagnosis;
  readonly shown: ShownTrial | undefined;
  readonly onClose: () => void;
}

/** One trial in large letters: steps, what to mind, and its results by number. */
export function LargeResults({ diagnosis, shown, onClose }: LargeResultsProps) {
  const workbench = useWorkbench();
  const words = shown && trialWordsIn(diagnosis.build, shown.trial);
  return (
    <LargePane
      label="Trial"
      doings={
        <>
          <Button className="button large-button" autoFocus onPress={onClose}>
            Leave
          </Button>
          {shown?.reasoned.results.map(({ result }, at) => (
            <Button
              key={result}
              className="button large-button large-onward"
              onPress={() => noteResult(workbench, shown.trial, result)}
            >
              {at + 1}: {resultName(result)}
            </Button>
          ))}
        </>
      }
    >
      {diagnosis.believed?.worksNow && (
        <p className="large-caution">
          {WORKS_NOW.proves} {WORKS_NOW.provesNot}
        </p>
      )}
      {diagnosis.next?.held && <p className="large-caution">{RISK_WORDS[diagnosis.next.held]}</p>}
      <Heading slot="title" level={2} className="large-title">
        {words?.title ?? 'No trial that may be made would tell more'}
      </Heading>
      {shown &&
        trialCautions(shown.trial).map((caution) => (
          <p key={caution} className="large-caution">
            {caution}
          </p>
        ))}
      {words && (
        <ol className="large-trial-steps">
          {keyed(words.steps).map(([key, step]) => (
            <li key={key}>{step}</li>
          ))}
        </ol>
      )}
    </LargePane>
  );
}
