import { useState } from 'react';
import { Autocomplete } from 'react-aria-components/Autocomplete';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { SearchBox } from '../look/search-box';
import { cutWords, matches, SHOWN } from './matching';

export interface SearchEntry {
  readonly id: string;
  readonly title: string;
  /** What it is or where, in small. */
  readonly words: string;
  readonly keys?: string | undefined;
  /** At the end of the line: what sets it apart. */
  readonly end?: string | undefined;
  readonly disabled?: boolean;
  readonly run: () => void;
}

interface SearchListProps {
  readonly label: string;
  readonly placeholder: string;
  readonly entries: readonly SearchEntry[];
  readonly empty: string;
}

/** A line to type into and the entries that match it; arrows move, Enter chooses, focus stays in the line. */
export function SearchList({ label, placeholder, entries, empty }: SearchListProps) {
  const [typed, setTyped] = useState('');
  const found = entries.filter(({ title, words }) => matches(`${title} ${words}`, typed));
  const cut = cutWords(found.length);
  return (
    <Autocomplete inputValue={typed} onInputChange={setTyped}>
      <SearchBox label={label} placeholder={placeholder} autoFocus />
      {/* The focus stays in the line above; a list that scrolls has to be reachable all the same. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls */}
      <section className="window-list" aria-label={`${label}, found`} tabIndex={0}>
        <ListBox
          aria-label={label}
          items={found.slice(0, SHOWN)}
          dependencies={[entries]}
          disabledKeys={found.filter((entry) => entry.disabled).map((entry) => entry.id)}
          onAction={(key) => found.find((entry) => entry.id === key)?.run()}
          renderEmptyState={() => <p className="soft window-list-empty">{empty}</p>}
        >
          {(entry) => (
            <ListBoxItem id={entry.id} textValue={`${entry.title}, ${entry.words}`} className="option">
              <span className="option-words">
                <span>{entry.title}</span>
                <span className="soft small">{entry.words}</span>
              </span>
              {entry.keys !== undefined && <kbd className="keys">{entry.keys}</kbd>}
              {entry.end !== undefined && <span className="option-end">{entry.end}</span>}
            </ListBoxItem>
          )}
        </ListBox>
      </section>
      <p className="soft small" role="status">
        {cut === '' ? '\u00a0' : cut}
      </p>
    </Autocomplete>
  );
}
