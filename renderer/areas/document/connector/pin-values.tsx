import { useState } from 'react';
import { FieldError } from 'react-aria-components/FieldError';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { Text } from 'react-aria-components/Text';
import { TextField } from 'react-aria-components/TextField';
import type { Pin } from '../../../../boards/document/connector';
import { type ParameterId, parameterOf } from '../../../../boards/signals/parameters';
import { stubParameters } from '../../../../boards/signals/stub-parameters';
import { readValue, unitName, unusualWords, usualWords, valueText } from '../../../words/value-words';

type Values = NonNullable<Pin['values']>;

interface PinValuesProps {
  readonly pin: Pin;
  /** All that is stated from now on; undefined where nothing is. */
  readonly onChange: (values: Values | undefined) => void;
}

/** What was measured or read of the circuit behind a pin: it takes the place of the usual range. */
export function PinValues({ pin, onChange }: PinValuesProps) {
  const { values = [] } = pin;
  const parameters = stubParameters(pin);
  if (parameters.length === 0 || pin.missing) return null;
  const state = (id: ParameterId, value: number | undefined) => {
    // Values of a signal that the pin no longer has go with the next change.
    const others = values.filter(({ parameter }) => parameter !== id && parameters.includes(parameter));
    const all = value === undefined ? others : [...others, { parameter: id, value }];
    onChange(all.length === 0 ? undefined : all);
  };
  return (
    <fieldset className="pin-values" aria-label="Behind the pin, where known">
      <p className="field-label">Behind the pin, where known</p>
      {parameters.map((id) => (
        <ValueLine
          key={`${pin.pin} ${id}`}
          id={id}
          value={values.find(({ parameter }) => parameter === id)?.value}
          onDone={(value) => state(id, value)}
        />
      ))}
    </fieldset>
  );
}

interface ValueLineProps {
  readonly id: ParameterId;
  readonly value: number | undefined;
  readonly onDone: (value: number | undefined) => void;
}

/** Typing is one step for undo; Escape takes it back, an emptied line takes the value out of the sheet. */
function ValueLine({ id, value, onDone }: ValueLineProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState('');
  const parameter = parameterOf(id);
  const stated = value === undefined ? '' : valueText(value);
  const put = (next: string | null, said: string) => {
    setTyped(next);
    setProblem(said);
  };
  const done = () => {
    if (typed === null) return;
    const read = typed.trim() === '' ? undefined : readValue(typed, parameter);
    if (read && !read.ok) {
      setProblem(read.problem);
      return;
    }
    if (read?.value !== value) onDone(read?.value);
    put(null, '');
  };
  const unusual = value === undefined || typed !== null ? '' : unusualWords(value, parameter);
  return (
    <TextField
      className="field"
      value={typed ?? stated}
      isInvalid={problem !== ''}
      onChange={(next) => put(next, '')}
      onBlur={done}
      onKeyDown={(event) => {
        if (event.key === 'Enter') done();
        else if (event.key === 'Escape' && typed !== null) put(null, '');
        else event.continuePropagation();
      }}
    >
      <Label className="field-label">
        {parameter.name}, in {unitName(parameter)}
      </Label>
      <Input maxLength={24} placeholder={usualWords(parameter)} />
      <FieldError className="field-problem">{problem}</FieldError>
      {unusual !== '' && (
        <Text slot="description" className="soft small">
          {unusual}
        </Text>
      )}
    </TextField>
  );
}
