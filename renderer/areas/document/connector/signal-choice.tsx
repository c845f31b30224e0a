import { ChevronDown } from 'lucide-react';
import { Button } from 'react-aria-components/Button';
import { ComboBox } from 'react-aria-components/ComboBox';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { Popover } from 'react-aria-components/Popover';
import type { SignalId } from '../../../../boards/signals/signals';
import { SIGNAL_ENTRIES, type SignalEntry } from './signal-entries';

interface SignalChoiceProps {
  readonly label?: string;
  /** null: pins that have not the same. */
  readonly chosen: SignalId | null;
  readonly onChoose: (signal: SignalId) => void;
}

/** What a pin does, from the one list of signals; typing narrows it. */
export function SignalChoice({ label = 'Signal', chosen, onChoose }: SignalChoiceProps) {
  return (
    <ComboBox
      className="field"
      defaultItems={SIGNAL_ENTRIES}
      selectedKey={chosen}
      menuTrigger="input"
      onSelectionChange={(key) => {
        const entry = SIGNAL_ENTRIES.find(({ id }) => id === key);
        if (entry && entry.id !== chosen) onChoose(entry.id);
      }}
    >
      <Label className="field-label">{label}</Label>
      <div className="combo">
        <Input placeholder={chosen === null ? 'not the same' : ''} />
        <Button className="combo-button">
          <ChevronDown size={16} aria-hidden="true" />
        </Button>
      </div>
      <Popover className="popover">
        <ListBox<SignalEntry> className="options">
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
