import { useState } from 'react';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { TextArea } from 'react-aria-components/TextArea';
import { TextField } from 'react-aria-components/TextField';

interface TextLineProps {
  readonly label: string;
  /** Off where a table's head already says it. */
  readonly labelShown?: boolean;
  readonly value: string;
  readonly maxLength: number;
  /** Called once when the person is done: on Enter, or on leaving the field. */
  readonly onDone: (value: string) => void;
  readonly area?: boolean;
  readonly placeholder?: string;
}

/** A line of the document. Typing is one step for undo, not one a letter; Escape takes it back. */
export function TextLine({
  label,
  labelShown = true,
  value,
  maxLength,
  onDone,
  area = false,
  placeholder = '',
}: TextLineProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const done = () => {
    if (typed !== null && typed !== value) onDone(typed);
    setTyped(null);
  };
  return (
    <TextField
      className="field"
      value={typed ?? value}
      {...(!labelShown && { 'aria-label': label })}
      onChange={setTyped}
      onBlur={done}
      onKeyDown={(event) => {
        if (event.key === 'Enter' && !area) done();
        else if (event.key === 'Escape' && typed !== null) setTyped(null);
        else event.continuePropagation();
      }}
    >
      {labelShown && <Label className="field-label">{label}</Label>}
      {area ? (
        <TextArea maxLength={maxLength} rows={3} placeholder={placeholder} />
      ) : (
        <Input maxLength={maxLength} placeholder={placeholder} />
      )}
    </TextField>
  );
}
