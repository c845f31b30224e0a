import { useState } from 'react';
import { FieldError } from 'react-aria-components/FieldError';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { TextField } from 'react-aria-components/TextField';
import type { Mm } from '../../boards/base/units';
import { type LengthBounds, mmFigures, readLength } from '../words/length-words';

interface LengthLineProps {
  readonly label: string;
  /** Off where a table's head already says it. */
  readonly labelShown?: boolean;
  /** Undefined where it is not known. */
  readonly value: Mm | undefined;
  readonly bounds: LengthBounds;
  /** Called once when the person is done; undefined when the line was emptied and may be empty. */
  readonly onDone: (mm: Mm | undefined) => void;
  readonly mayBeEmpty?: boolean;
}

/**
 * A length of the document in millimetres; inches are taken too. What is no length stays in the line with
 * the reason under it, and the document stays as it was; Escape takes it back.
 */
export function LengthLine({
  label,
  labelShown = true,
  value,
  bounds,
  onDone,
  mayBeEmpty = false,
}: LengthLineProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState('');
  const put = (next: string | null, said = '') => {
    setTyped(next);
    setProblem(said);
  };
  const done = () => {
    if (typed === null) return;
    if (typed.trim() === '') {
      if (mayBeEmpty && value !== undefined) onDone(undefined);
      put(null);
      return;
    }
    const read = readLength(typed, bounds);
    if (!read.ok) {
      setProblem(read.problem);
      return;
    }
    if (read.value !== value) onDone(read.value);
    put(null);
  };
  return (
    <TextField
      className="field length-line"
      value={typed ?? (value === undefined ? '' : mmFigures(value))}
      isInvalid={problem !== ''}
      {...(!labelShown && { 'aria-label': label })}
      onChange={(next) => put(next)}
      onBlur={done}
      onKeyDown={(event) => {
        if (event.key === 'Enter') done();
        else if (event.key === 'Escape' && typed !== null) put(null);
        else event.continuePropagation();
      }}
    >
      {labelShown && <Label className="field-label">{label}</Label>}
      <Input maxLength={24} inputMode="decimal" />
      <FieldError className="field-problem">{problem}</FieldError>
    </TextField>
  );
}
