import type { ReactElement } from 'react';
import { Header } from 'react-aria-components/Header';
import { ListBox, type ListBoxItemProps, ListBoxSection } from 'react-aria-components/ListBox';
import { LongList, listClass } from '../../look/long-list';

interface Keyed {
  readonly key: string;
}

interface Section<Row extends Keyed> {
  readonly title: string;
  readonly rows: readonly Row[];
}

interface SectionedListProps<Row extends Keyed> {
  readonly label: string;
  readonly sections: readonly Section<Row>[];
  /** Said where there are no rows. */
  readonly empty: string;
  /** The key of the row that is chosen. */
  readonly chosen: string | undefined;
  readonly onChoose: (row: Row) => void;
  /** Enter on a row. */
  readonly onEnter?: () => void;
  /** About how high a row is. */
  readonly rowPx: number;
  readonly children: (row: Row) => ReactElement<ListBoxItemProps>;
}

/** A list of the shelf in sections, of which one row is chosen. */
export function SectionedList<Row extends Keyed>({
  label,
  sections,
  empty,
  chosen,
  onChoose,
  onEnter,
  rowPx,
  children,
}: SectionedListProps<Row>) {
  const all = sections.flatMap(({ rows }) => rows);
  return (
    <LongList rows={all.length} rowPx={rowPx}>
      <ListBox
        className={listClass('shelf-list tray-list', all.length)}
        aria-label={label}
        items={sections}
        selectionMode="single"
        selectionBehavior="replace"
        selectedKeys={chosen === undefined ? [] : [chosen]}
        onSelectionChange={(keys) => {
          const key = keys === 'all' ? undefined : [...keys][0];
          const row = all.find((each) => each.key === key);
          if (row) onChoose(row);
        }}
        {...(onEnter && { onAction: onEnter })}
        renderEmptyState={() => <p className="soft window-list-empty">{empty}</p>}
      >
        {({ title, rows }) => (
          <ListBoxSection id={title} items={rows}>
            <Header className="shelf-heading">
              {title}
              <span>{rows.length}</span>
            </Header>
            {rows.map(children)}
          </ListBoxSection>
        )}
      </ListBox>
    </LongList>
  );
}
