import { ok } from '../../../../boards/base/result';
import type { Pin } from '../../../../boards/document/connector';
import { type ParameterId, parameterOf } from '../../../../boards/signals/parameters';
import { stubParameters } from '../../../../boards/signals/stub-parameters';
import { ReadLine } from '../../../look/read-line';
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

/** An emptied line takes the value out of the sheet. */
function ValueLine({ id, value, onDone }: ValueLineProps) {
  const parameter = parameterOf(id);
  return (
    <ReadLine<number | undefined>
      label={`${parameter.name}, in ${unitName(parameter)}`}
      shown={value === undefined ? '' : valueText(value)}
      read={(typed) => (typed.trim() === '' ? ok(undefined) : readValue(typed, parameter))}
      onDone={(next) => {
        if (next !== value) onDone(next);
      }}
      placeholder={usualWords(parameter)}
      remark={value === undefined ? '' : unusualWords(value, parameter)}
    />
  );
}
