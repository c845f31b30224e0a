import { ChevronDown } from 'lucide-react';
import { Button } from 'react-aria-components/Button';
import { ComboBox } from 'react-aria-components/ComboBox';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { Popover } from 'react-aria-components/Popover';
import type { Signal } from '../../../../boards/signals/signal';
import { SIGNALS, type SignalId } from '../../../../boards/signals/signals';

interface Entry {
  readonly id: SignalId;
  readonly name: string;
}

const TWICE: ReadonlySet<string> = new Set(
  SIGNALS.map(({ name }) => name).filter((name, at, names) => names.indexOf(name) !== at),
);

/** Signals with the job behind the name where several have that name: "D− (usb3)". */
const ENTRIES: readonly Entry[] = SIGNALS.map(({ id, name, job }: Signal & { readonly id: SignalId }) => ({
  id,
  name: job !== undefined && TWICE.has(name) ? `${name} (${job.replaceAll('-', ' ')})` : name,
}));

interface SignalChoiceProps {
  readonly chosen: SignalId;
  readonly onChoose: (signal: SignalId) => void;
}

/** What a pin does, from the one list of signals; typing narrows it. */
export function SignalChoice({ chosen, onChoose }: SignalChoiceProps) {
  return (
    <ComboBox
      className="field"
      defaultItems={ENTRIES}
      selectedKey={chosen}
      menuTrigger="focus"
      onSelectionChange={(key) => {
        const entry = ENTRIES.find(({ id }) => id === key);
        if (entry && entry.id !== chosen) onChoose(entry.id);
      }}
    >
      <Label className="field-label">Signal</Label>
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
