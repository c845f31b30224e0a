import { useRef, useState } from 'react';
import { FieldError } from 'react-aria-components/FieldError';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { Text } from 'react-aria-components/Text';
import { TextField } from 'react-aria-components/TextField';
import type { PinReading } from '../../../../boards/document/pin-reading';
import type { MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { answerWords } from '../../../../boards/pinout/meter-run/outcome-words';
import { Button } from '../../../look/button';
import { answerHint, answerLabel, answersTo, readReading } from '../../../words/reading-words';

interface AnswerFormProps {
  readonly question: MeterQuestion;
  /** Off while it is not known yet whether this is still the question. */
  readonly ready: boolean;
  readonly autoFocus?: boolean;
  /** True when the reading was noted, and the line can be emptied for the next. */
  readonly onReading: (reading: PinReading) => boolean;
  readonly onSkip?: () => void;
}

/** The line that a reading is typed into. Enter notes it and the focus stays, so that a run needs the keyboard alone. */
export function AnswerForm({ question, ready, autoFocus = false, onReading, onSkip }: AnswerFormProps) {
  const [typed, setTyped] = useState('');
  const [problem, setProblem] = useState('');
  const line = useRef<HTMLInputElement>(null);
  const answers = answersTo(question);
  const note = (said: string) => {
    if (!ready) return;
    const read = readReading(question, said);
    if (!read.ok) setProblem(read.problem);
    else if (onReading(read.value)) {
      setTyped('');
      setProblem('');
      line.current?.focus();
    } else setProblem('It could not be noted. The strip at the bottom of the window says why.');
  };
  const skip = () => {
    if (!ready) return;
    setTyped('');
    setProblem('');
    onSkip?.();
    line.current?.focus();
  };
  return (
    <div className="answer-form">
      <TextField
        className="field"
        value={typed}
        isInvalid={problem !== ''}
        autoFocus={autoFocus}
        onChange={(next) => {
          setTyped(next);
          setProblem('');
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter') note(typed);
          else if (event.key === 'Escape' && typed !== '') setTyped('');
          else event.continuePropagation();
        }}
      >
        <Label className="field-label">{answerLabel(question)}</Label>
        <Input ref={line} maxLength={24} autoComplete="off" />
        <Text slot="description" className="soft small">
          {answerHint(question)}
        </Text>
        <FieldError className="field-problem">{problem}</FieldError>
      </TextField>
      {answers.length > 0 && (
        <ol className="answers" aria-label="Answers">
          {answers.map((answer, at) => (
            <li key={answer}>
              <Button onPress={() => note(String(at + 1))}>
                <kbd className="keys">{at + 1}</kbd>
                {answerWords(answer)}
              </Button>
            </li>
          ))}
        </ol>
      )}
      <div className="form-doings">
        <Button kind="main" disabled={typed.trim() === ''} onPress={() => note(typed)}>
          Note it
        </Button>
        {question.kind === 'ohms' && <Button onPress={() => note('OL')}>It shows open</Button>}
        {onSkip && <Button onPress={skip}>Skip this one</Button>}
      </div>
    </div>
  );
}
