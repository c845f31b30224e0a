import { TAKES, type Take } from '../../../boards/edit/compare/taking';

const WORDS: Readonly<Record<Take, string>> = {
  mine: 'Leave as it is',
  both: 'Keep both',
  theirs: 'Take theirs',
};

interface TakeChoiceProps {
  readonly label: string;
  /** Whether the label is on the screen; in a table its column and row say it. */
  readonly shown?: boolean;
  readonly take: Take;
  readonly onTake: (take: Take) => void;
}

/** What is taken of a difference. The system's own list: there may be hundreds of these in one table. */
export function TakeChoice({ label, shown = false, take, onTake }: TakeChoiceProps) {
  return (
    <label className="take-choice">
      <span className={shown ? 'field-label' : 'aside-hidden'}>{label}</span>
      <select value={take} onChange={({ target }) => onTake(takeNamed(target.value))}>
        {TAKES.map((each) => (
          <option key={each} value={each}>
            {WORDS[each]}
          </option>
        ))}
      </select>
    </label>
  );
}

function takeNamed(value: string): Take {
  return TAKES.find((take) => take === value) ?? 'mine';
}
