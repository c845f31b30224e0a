import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { TextField } from 'react-aria-components/TextField';
import type { PinSource } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { SOURCE_WORDS } from '../../../../boards/document/pin-words';
import { Choice } from '../../../look/choice';

const KINDS = (['manual', 'print', 'standard', 'measured', 'guessed'] as const).map((id) => ({
  id,
  label: SOURCE_WORDS[id],
}));

interface ListSourceProps {
  readonly source: PinSource;
  readonly onChange: (source: PinSource) => void;
}

/** Where the list was read: it becomes the source of every pin that is filled. */
export function ListSource({ source: { kind, where }, onChange }: ListSourceProps) {
  return (
    <div className="list-source">
      <Choice
        label="Read in"
        options={KINDS}
        chosen={kind}
        onChoose={(id) => onChange({ kind: id, ...(where !== undefined && { where }) })}
      />
      <TextField
        className="field"
        value={where ?? ''}
        onChange={(typed) => onChange(typed === '' ? { kind } : { kind, where: typed })}
      >
        <Label className="field-label">Where: document and page</Label>
        <Input maxLength={LIMITS.textLength} />
      </TextField>
    </div>
  );
}
