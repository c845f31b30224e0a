import { ChevronDown } from 'lucide-react';
import { Button } from 'react-aria-components/Button';
import { ComboBox, type ComboBoxProps } from 'react-aria-components/ComboBox';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { Popover } from 'react-aria-components/Popover';

interface Entry {
  readonly id: string;
  readonly name: string;
}

type Passed = Pick<
  ComboBoxProps<Entry>,
  'aria-label' | 'className' | 'selectedKey' | 'defaultSelectedKey' | 'menuTrigger'
>;

interface SearchChoiceProps<Id extends string> extends Passed {
  readonly entries: readonly { readonly id: Id; readonly name: string }[];
  readonly label?: string;
  readonly placeholder?: string;
  /** What is chosen now: choosing it again is no change. */
  readonly chosen: Id | null;
  readonly onChoose: (id: Id) => void;
}

/** One of many; typing narrows the list. */
export function SearchChoice<Id extends string>({
  entries,
  label,
  placeholder = '',
  chosen,
  onChoose,
  className = 'field',
  ...passed
}: SearchChoiceProps<Id>) {
  return (
    <ComboBox
      {...passed}
      className={className}
      defaultItems={entries}
      onSelectionChange={(key) => {
        const entry = entries.find(({ id }) => id === key);
        if (entry && entry.id !== chosen) onChoose(entry.id);
      }}
    >
      {label !== undefined && <Label className="field-label">{label}</Label>}
      <div className="combo">
        <Input placeholder={placeholder} />
        <Button className="combo-button">
          <ChevronDown size={16} aria-hidden="true" />
        </Button>
      </div>
      <Popover className="popover">
        <ListBox<Entry> className="options">
          {(entry) => (
            <ListBoxItem id={entry.id} className="option">
              {entry.name}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
