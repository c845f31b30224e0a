import { useState } from 'react';
import { ok } from '../../../../boards/base/result';
import type { Mm } from '../../../../boards/base/units';
import { Choice } from '../../../look/choice';
import { ReadLine } from '../../../look/read-line';
import { mmText, readPitch } from '../../../words/size-words';

const NBSP = '\u00a0';
const USUAL = [2.54, 2, 1.27] as const;
const PITCHES = [
  ...USUAL.map((mm) => ({ id: mmText(mm), label: `${mm.toFixed(2)}${NBSP}mm` })),
  { id: 'other', label: 'another pitch' },
];

interface PitchFieldsProps {
  readonly pitchMm: Mm;
  /** null: the same as along a row. */
  readonly rowPitchMm: Mm | null;
  readonly onProblem?: (label: string, problem: boolean) => void;
  readonly onChange: (changed: { readonly pitchMm?: Mm; readonly rowPitchMm?: Mm | null }) => void;
}

/** The distance of pins along a row, from the usual ones or any other, and across where it differs. */
export function PitchFields({ pitchMm, rowPitchMm, onProblem = () => {}, onChange }: PitchFieldsProps) {
  const usual = USUAL.some((mm) => mm === pitchMm);
  const [other, setOther] = useState(false);
  return (
    <>
      <Choice
        label="Pitch"
        options={PITCHES}
        chosen={usual && !other ? mmText(pitchMm) : 'other'}
        onChoose={(id) => {
          const mm = USUAL.find((each) => mmText(each) === id);
          setOther(mm === undefined);
          if (mm !== undefined) onChange({ pitchMm: mm });
        }}
      />
      {(other || !usual) && (
        <ReadLine
          label="Pitch, mm"
          shown={mmText(pitchMm)}
          read={readPitch}
          onProblem={onProblem}
          onDone={(mm) => onChange({ pitchMm: mm })}
        />
      )}
      <ReadLine<Mm | null>
        label="Between rows, mm"
        shown={rowPitchMm === null ? '' : mmText(rowPitchMm)}
        placeholder="the same"
        read={(typed) => (typed.trim() === '' ? ok(null) : readPitch(typed))}
        onProblem={onProblem}
        onDone={(mm) => onChange({ rowPitchMm: mm === pitchMm ? null : mm })}
      />
    </>
  );
}
