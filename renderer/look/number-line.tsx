import { Group } from 'react-aria-components/Group';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { NumberField } from 'react-aria-components/NumberField';

interface NumberLineProps {
  readonly label: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly onDone: (value: number) => void;
}

/** A number of the document, in the unit its label names. Arrow keys step it. */
export function NumberLine({ label, value, min, max, step, onDone }: NumberLineProps) {
  return (
    <NumberField
      className="field"
      value={value}
      minValue={min}
      maxValue={max}
      step={step}
      formatOptions={{ maximumFractionDigits: 2, useGrouping: false }}
      onChange={(next) => {
        if (Number.isFinite(next) && next !== value) onDone(next);
      }}
    >
      <Label className="field-label">{label}</Label>
      <Group>
        <Input />
      </Group>
    </NumberField>
  );
}
