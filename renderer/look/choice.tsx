import { ChevronDown } from 'lucide-react';
import { Button } from 'react-aria-components/Button';
import { Label } from 'react-aria-components/Label';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { Popover } from 'react-aria-components/Popover';
import { Select, SelectValue } from 'react-aria-components/Select';

interface ChoiceProps<Id extends string> {
  readonly label: string;
  /** Off where a table's head already says it. */
  readonly labelShown?: boolean;
  readonly options: readonly { readonly id: Id; readonly label: string }[];
  readonly chosen: Id;
  readonly onChoose: (id: Id) => void;
}

/** One of a few. */
export function Choice<Id extends string>({
  label,
  labelShown = true,
  options,
  chosen,
  onChoose,
}: ChoiceProps<Id>) {
  return (
    <Select
      className="field"
      selectedKey={chosen}
      {...(!labelShown && { 'aria-label': label })}
      onSelectionChange={(key) => {
        const option = options.find(({ id }) => id === key);
        if (option && option.id !== chosen) onChoose(option.id);
      }}
    >
      {labelShown && <Label className="field-label">{label}</Label>}
      <Button className="choice-button">
        <SelectValue />
        <ChevronDown size={16} aria-hidden="true" />
      </Button>
      <Popover className="popover">
        <ListBox className="options" items={options}>
          {(option) => (
            <ListBoxItem id={option.id} textValue={option.label} className="option">
              <span>{option.label}</span>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}
