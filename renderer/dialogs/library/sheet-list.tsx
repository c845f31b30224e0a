import { Collection } from 'react-aria-components/Collection';
import { Header } from 'react-aria-components/Header';
import { ListBox, ListBoxItem, ListBoxSection } from 'react-aria-components/ListBox';
import { cutWords, SHOWN } from '../matching';
import type { SheetSection } from './sheet-rows';

interface SheetListProps {
  readonly sections: readonly SheetSection[];
  readonly chosen: string | null;
  readonly empty: string;
  readonly onChoose: (handle: string) => void;
  /** Enter, or a double click. */
  readonly onOpen: (handle: string) => void;
}

/** The sheets under their headings. Arrows choose, Enter opens. */
export function SheetList({ sections, chosen, empty, onChoose, onOpen }: SheetListProps) {
  const found = sections.reduce((sum, { rows }) => sum + rows.length, 0);
  const shown = firstOf(sections, SHOWN);
  const cut = cutWords(found);
  return (
    <div className="library-list">
      <ListBox
        className="window-list library-sheets"
        aria-label="Sheets"
        items={shown}
        selectionMode="single"
        selectionBehavior="replace"
        selectedKeys={chosen === null ? [] : [chosen]}
        onSelectionChange={(keys) => {
          const key = keys === 'all' ? undefined : [...keys][0];
          if (key !== undefined) onChoose(String(key));
        }}
        onAction={(key) => onOpen(String(key))}
        renderEmptyState={() => <p className="soft window-list-empty">{empty}</p>}
      >
        {(section) => (
          <ListBoxSection id={section.id}>
            <Header className="shelf-heading">
              <span>{section.heading}</span>
              <span>{section.rows.length}</span>
            </Header>
            <Collection items={section.rows.map((row) => ({ ...row, id: row.handle }))}>
              {(row) => (
                <ListBoxItem id={row.handle} textValue={`${row.title}, ${row.words}`} className="option">
                  <span className="option-words">
                    <span>{row.title}</span>
                    <span className="soft small">{row.words}</span>
                  </span>
                </ListBoxItem>
              )}
            </Collection>
          </ListBoxSection>
        )}
      </ListBox>
      <p className="soft small" role="status">
        {cut === '' ? '\u00a0' : cut}
      </p>
    </div>
  );
}

/** So many rows of all sections together; sections that have none left are left out. */
function firstOf(sections: readonly SheetSection[], limit: number): readonly SheetSection[] {
  let left = limit;
  return sections.flatMap((section) => {
    const rows = section.rows.slice(0, left);
    left -= rows.length;
    return rows.length === 0 ? [] : [{ ...section, rows }];
  });
}
