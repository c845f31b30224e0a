import { BookOpen, Ear, Eye, Gauge, Hand, type LucideIcon, Pointer, Wind } from 'lucide-react';
import { memo } from 'react';
import { GridListItem } from 'react-aria-components/GridList';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import type { Observation, Sense } from '../../../../boards/diagnosis/observations/observation';
import type { ObservationId } from '../../../../boards/diagnosis/observations/observations';
import { SENSE_WORDS } from '../../../words/trouble-words';
import { useWorkbench } from '../../../workbench';
import type { Answer } from '../answers';
import { answer as say } from '../doings';

interface SymptomRowProps {
  readonly asked: Observation<ObservationId>;
  readonly answer: Answer | undefined;
}

const ICONS: Readonly<Record<Sense, LucideIcon>> = {
  see: Eye,
  hear: Ear,
  smell: Wind,
  feel: Hand,
  read: BookOpen,
  measure: Gauge,
  try: Pointer,
};

const CHOICES = [
  { said: 'yes', words: 'Yes' },
  { said: 'no', words: 'No' },
  { said: null, words: 'Not looked' },
] as const;

/** One question: what to notice, what yes is like, and the three answers. */
export const SymptomRow = memo(function SymptomRow({ asked, answer }: SymptomRowProps) {
  const workbench = useWorkbench();
  const { id, question, sign, sense, stop } = asked;
  const Icon = ICONS[sense];
  const isSaid = (said: 'yes' | 'no' | null) =>
    said === null ? answer === undefined : answer === said || answer === 'both';
  return (
    <GridListItem
      id={id}
      className="symptom"
      textValue={`${question} ${sign} ${answer ?? 'not looked yet'}`}
      data-answer={answer ?? 'none'}
    >
      <Icon className="symptom-sense" size={18} role="img" aria-label={SENSE_WORDS[sense]} />
      <span className="symptom-words">
        <span className="symptom-question">{question}</span>
        <span className="soft small">
          {sign}
          {stop && ' Pull the mains plug first.'}
        </span>
        {answer === 'both' && <span className="symptom-both small">Said both ways. Look again.</span>}
      </span>
      <span className="symptom-answers">
        {CHOICES.map(({ said, words }) => (
          <ToggleButton
            key={words}
            className="answer"
            aria-label={`${words}: ${question}`}
            isSelected={isSaid(said)}
            onChange={() => say(workbench, id, said)}
          >
            {words}
          </ToggleButton>
        ))}
      </span>
    </GridListItem>
  );
});
