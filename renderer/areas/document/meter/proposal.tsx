import { useEffect, useRef } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import type { MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { stateAfter } from '../../../../boards/pinout/meter/next-reading';
import {
  questionName,
  questionWords,
  riskWords,
  STATE_NAMES,
  STATE_WORDS,
  stateFor,
} from '../../../../boards/pinout/meter/words';
import { meterWords, whyWords } from '../../../../boards/pinout/meter-run/outcome-words';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { SeveritySign } from '../../../look/severity-sign';
import { counted } from '../../../words/list-words';
import { minding, STAYS } from '../../../words/meter-words';
import { useWorkbench } from '../../../workbench';
import { AnswerForm } from './answer-form';
import { OutcomeTable } from './outcome-table';
import type { MeterState } from './use-identification';

interface ProposalProps {
  readonly connector: Connector;
  readonly meter: MeterState;
  /** How many readings the person does not want to be asked. */
  readonly skipped: number;
  readonly onSkip: (question: MeterQuestion) => void;
  readonly onUnskip: () => void;
}

/** The reading to take next: what to do, what each outcome would say, and the line to type it into. */
export function Proposal({ connector, meter, skipped, onSkip, onUnskip }: ProposalProps) {
  const workbench = useWorkbench();
  const { answer, state } = meter;
  const { readings = [] } = connector;
  const ready = state === 'ready';
  const next = answer?.next;
  const { withheld, verdict } = answer?.found.ok ? answer.found.value : {};
  return (
    <section className="meter-next" aria-label="Next reading" aria-busy={!ready}>
      <div className="form-head">
        <h3>Next reading</h3>
        <Working meter={meter} />
      </div>
      {ready && verdict === 'identified' && next && (
        <p className="meter-enough">
          One layout is told well enough. Fill the pins now, or go on to be surer.
        </p>
      )}
      {next ? (
        <>
          <div className="meter-step" data-old={!ready || undefined}>
            <p className="meter-marks">
              <span className="meter-mark">{STATE_NAMES[stateFor(next.question)]}</span>
              <span className="meter-mark">{meterWords(next.question)}</span>
            </p>
            <p className="meter-name" role="status">
              {questionName(next.question)}
            </p>
            <StateLine question={next.question} before={readings.length > 0 ? stateAfter(readings) : null} />
            <p>{questionWords(next.question)}</p>
          </div>
          <AnswerForm
            question={next.question}
            ready={ready}
            autoFocus
            onReading={(reading) =>
              doCommand(workbench, { name: 'note-reading', args: { connector: connector.id, reading } })
            }
            onSkip={() => onSkip(next.question)}
          />
          <div data-old={!ready || undefined} className="meter-step">
            <OutcomeTable outcomes={answer?.outcomes ?? []} />
            <p className="soft small">{whyWords(next)}</p>
          </div>
        </>
      ) : (
        ready && answer?.found.ok && <NothingLeft />
      )}
      {withheld && (
        <p className="soft small">
          {`Not proposed, though it would tell more: ${questionName(withheld.question)}. ${riskWords(withheld.risk)}`}
        </p>
      )}
      {skipped > 0 && (
        <p className="small">
          {`${counted(skipped, 'reading')} skipped. `}
          <Button kind="link" onPress={onUnskip}>
            Ask them again
          </Button>
        </p>
      )}
    </section>
  );
}

/** How the machine is brought into the state of a reading, and what to mind in it. */
function StateLine({
  question,
  before,
}: {
  readonly question: MeterQuestion;
  readonly before: ReturnType<typeof stateFor> | null;
}) {
  const state = stateFor(question);
  const words = state === before ? STAYS[state] : STATE_WORDS[state];
  return (
    <p className="meter-caution">
      <SeveritySign severity={state === 'unplugged' ? 'note' : 'doubt'} />
      <span>{`${words} ${minding(question)}`}</span>
    </p>
  );
}

/** Says that it is being worked out, and offers to stop it when that takes long. */
function Working({ meter: { state, stop, again } }: { readonly meter: MeterState }) {
  if (state === 'ready') return null;
  return (
    <p className="meter-working small" role="status">
      {state === 'stopped' ? 'Stopped. The chances are those from before.' : 'Working it out…'}
      {state === 'long' && <Button onPress={stop}>Cancel</Button>}
      {state === 'stopped' && <Button onPress={again}>Work it out</Button>}
    </p>
  );
}

/** Takes the focus that the line had, so that the keyboard is not lost with it. */
function NothingLeft() {
  const here = useRef<HTMLParagraphElement>(null);
  useEffect(() => {
    if (document.activeElement === null || document.activeElement === document.body) here.current?.focus();
  }, []);
  return (
    <p ref={here} tabIndex={-1} role="status">
      Nothing that is safe to measure would tell more.
    </p>
  );
}
