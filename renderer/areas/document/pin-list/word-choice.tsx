import type { SignalId } from '../../../../boards/signals/signals';
import { SearchChoice } from '../../../look/search-choice';
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
    <SearchChoice
      className="field word-choice"
      aria-label={`Signal of pin ${pin}`}
      entries={ENTRIES}
      chosen={meant}
      defaultSelectedKey={meant}
      menuTrigger="focus"
      onChoose={onChoose}
    />
  );
}
