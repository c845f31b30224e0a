import { useState } from 'react';
import { FieldError } from 'react-aria-components/FieldError';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { Text } from 'react-aria-components/Text';
import { TextField } from 'react-aria-components/TextField';
import type { Result } from '../../boards/base/result';

interface ReadLineProps<T> {
  readonly label: string;
  /** What the document holds, as it is typed. */
  readonly shown: string;
  /** What was typed, understood; or why it is not. */
  readonly read: (typed: string) => Result<T, string>;
  readonly onDone: (value: T) => void;
  readonly placeholder?: string;
  /** Said below the line, such as a second look that a value is worth. */
  readonly remark?: string;
  /** Told when what stands in the line cannot be taken, and when it can again. */
  readonly onProblem?: (label: string, problem: boolean) => void;
}

/** A line whose text has to be understood. Typing is one step for undo; Escape takes it back. */
export function ReadLine<T>({
  label,
  shown,
  read,
  onDone,
  placeholder,
  remark = '',
  onProblem,
}: ReadLineProps<T>) {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState('');
  const put = (next: string | null, said: string) => {
    setTyped(next);
    setProblem(said);
    onProblem?.(label, said !== '');
  };
  const done = () => {
    if (typed === null) return;
    if (typed === shown) {
      put(null, '');
      return;
    }
    const result = read(typed);
    if (!result.ok) {
      put(typed, result.problem);
      return;
    }
    put(null, '');
    onDone(result.value);
  };
  return (
    <TextField
      className="field"
      value={typed ?? shown}
      isInvalid={problem !== ''}
      onChange={(next) => put(next, '')}
      onBlur={done}
      onKeyDown={(event) => {
        if (event.key === 'Enter') {
          // Or the key would also press the button of a question that this opens.
          event.preventDefault();
          done();
        } else if (event.key === 'Escape' && typed !== null) put(null, '');
        else event.continuePropagation();
      }}
    >
      <Label className="field-label">{label}</Label>
      <Input maxLength={24} {...(placeholder !== undefined && { placeholder })} />
      <FieldError className="field-problem">{problem}</FieldError>
      {remark !== '' && typed === null && (
        <Text slot="description" className="soft small">
          {remark}
        </Text>
      )}
    </TextField>
  );
}
