import { ChevronDown } from 'lucide-react';
import { Button } from 'react-aria-components/Button';
import { ComboBox } from 'react-aria-components/ComboBox';
import { Input } from 'react-aria-components/Input';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { Popover } from 'react-aria-components/Popover';
import type { SignalId } from '../../../../boards/signals/signals';
import { SIGNAL_ENTRIES } from '../connector/signal-entries';

/** What a word can be said to mean: a signal, or that no pin stands there. */
export type Meant = SignalId | 'no-pin';

interface Entry {
  readonly id: Meant;
  readonly name: string;
}

const ENTRIES: readonly Entry[] = [{ id: 'no-pin', name: 'no pin' }, ...SIGNAL_ENTRIES];

interface WordChoiceProps {
  readonly pin: string;
  readonly meant: Meant;
  readonly onChoose: (meant: Meant) => void;
}

/** What a word that was not surely understood means; typing narrows the list. */
export function WordChoice({ pin, meant, onChoose }: WordChoiceProps) {
  return (
    <ComboBox
      className="field word-choice"
      aria-label={`Signal of pin ${pin}`}
      defaultItems={ENTRIES}
      defaultSelectedKey={meant}
      menuTrigger="focus"
      onSelectionChange={(key) => {
        const entry = ENTRIES.find(({ id }) => id === key);
        if (entry && entry.id !== meant) onChoose(entry.id);
      }}
    >
      <div className="combo">
        <Input />
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
