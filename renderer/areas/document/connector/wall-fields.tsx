import { Checkbox } from 'react-aria-components/Checkbox';
import { CheckboxGroup } from 'react-aria-components/CheckboxGroup';
import { Label } from 'react-aria-components/Label';
import { type Shroud, SIDES, type Side } from '../../../../boards/document/connector';
import { Choice } from '../../../look/choice';

const NONE = 'none';

interface WallFieldsProps {
  readonly shroud: Shroud | null;
  /** The sides of the unturned connector, and where each is drawn. */
  readonly sides: readonly { readonly id: Side; readonly drawn: Side }[];
  /** null: no wall and no slot. */
  readonly onChange: (shroud: Shroud | null) => void;
}

/** On which sides a wall stands, and on which the slot or ramp is, called as they are drawn. */
export function WallFields({ shroud, sides, onChange }: WallFieldsProps) {
  const ordered = SIDES.flatMap((drawn) => sides.find((side) => side.drawn === drawn) ?? []);
  const { walls = [], guide } = shroud ?? {};
  const put = (next: readonly string[], slot: Side | undefined) => {
    const standing = SIDES.filter((side) => next.includes(side));
    if (standing.length === 0 && slot === undefined) onChange(null);
    else onChange({ walls: standing, ...(slot && { guide: slot }) });
  };
  return (
    <div className="form-row form-row-top">
      <CheckboxGroup className="walls" value={[...walls]} onChange={(next) => put(next, guide)}>
        <Label className="field-label">Walls round the pins, as drawn</Label>
        {ordered.map(({ id, drawn }) => (
          <Checkbox key={id} value={id} className="check">
            <span className="check-box" aria-hidden="true" />
            {drawn}
          </Checkbox>
        ))}
      </CheckboxGroup>
      <Choice
        label="Slot or ramp"
        options={[{ id: NONE, label: 'none' }, ...ordered.map(({ id, drawn }) => ({ id, label: drawn }))]}
        chosen={guide ?? NONE}
        onChoose={(id) => put(walls, id === NONE ? undefined : id)}
      />
    </div>
  );
}
