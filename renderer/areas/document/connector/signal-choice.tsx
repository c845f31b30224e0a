import type { SignalId } from '../../../../boards/signals/signals';
import { SearchChoice } from '../../../look/search-choice';
import { SIGNAL_ENTRIES } from './signal-entries';

interface SignalChoiceProps {
  readonly label?: string;
  /** null: pins that have not the same. */
  readonly chosen: SignalId | null;
  readonly onChoose: (signal: SignalId) => void;
}

/** What a pin does, from the one list of signals; typing narrows it. */
export function SignalChoice({ label = 'Signal', chosen, onChoose }: SignalChoiceProps) {
  return (
    <SearchChoice
      label={label}
      entries={SIGNAL_ENTRIES}
      chosen={chosen}
      selectedKey={chosen}
      menuTrigger="input"
      placeholder={chosen === null ? 'not the same' : ''}
      onChoose={onChoose}
    />
  );
}
