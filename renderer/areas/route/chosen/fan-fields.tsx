import type { FanPlace } from '../../../../boards/document/tray';
import { Choice } from '../../../look/choice';
import { blowsWords, WALL_WORDS } from '../../../words/tray-words';
import { Figure } from '../figure';

const WALLS = (['front', 'rear', 'top', 'bottom', 'side'] as const).map((id) => ({
  id,
  label: WALL_WORDS[id],
}));

const STRUTS: readonly { readonly id: 'inward' | 'outward' | 'unseen'; readonly label: string }[] = [
  { id: 'inward', label: 'into the case' },
  { id: 'outward', label: 'out of the case' },
  { id: 'unseen', label: 'not looked at' },
];

const MOST_FLOW = 2_000;

interface FanFieldsProps {
  readonly fan: FanPlace;
  readonly onChange: (fan: FanPlace) => void;
}

/** The wall that a fan is on, which way it faces, and what its maker says that it moves. */
export function FanFields({ fan, onChange }: FanFieldsProps) {
  const { strutsFace, ...unseen } = fan;
  const { flowM3PerHour, ...unmeasured } = fan;
  return (
    <>
      <Choice
        label="Wall"
        options={WALLS}
        chosen={fan.wall}
        onChoose={(wall) => onChange({ ...fan, wall })}
      />
      <Choice
        label="Its struts look"
        options={STRUTS}
        chosen={strutsFace ?? 'unseen'}
        onChoose={(face) => onChange(face === 'unseen' ? unseen : { ...fan, strutsFace: face })}
      />
      <p className="soft small">
        {strutsFace === undefined
          ? 'Look at the fan: air leaves on the side with the struts.'
          : `So it ${blowsWords(fan)}: air leaves on the side with the struts.`}
      </p>
      <Figure
        label="Flow by its maker, m³/h"
        value={flowM3PerHour}
        most={MOST_FLOW}
        unit="cubic metres an hour"
        onDone={(flow) => onChange(flow === undefined ? unmeasured : { ...fan, flowM3PerHour: flow })}
      />
    </>
  );
}
