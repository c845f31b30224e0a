import type { ReactNode } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs';

interface ShelfTab<Id extends string> {
  readonly id: Id;
  readonly name: string;
  readonly shown: ReactNode;
}

interface ShelfTabsProps<Id extends string> {
  readonly label: string;
  readonly tabs: readonly ShelfTab<Id>[];
  /** Where it is decided elsewhere which one is open; otherwise the first is, until another is chosen. */
  readonly open?: Id;
  readonly onOpen?: (id: Id) => void;
  /** Beside the tabs. */
  readonly aside?: ReactNode;
  /** Of the open list, besides the usual one. */
  readonly panelClass?: string;
}

/** What a shelf lists, one list at a time. */
export function ShelfTabs<Id extends string>(props: ShelfTabsProps<Id>) {
  const { label, tabs, open, onOpen, aside, panelClass } = props;
  const panel = panelClass === undefined ? 'tab-panel' : `tab-panel ${panelClass}`;
  return (
    <Tabs
      className="shelf-tabs"
      {...(open !== undefined && { selectedKey: open })}
      onSelectionChange={(key) => {
        const tab = tabs.find(({ id }) => id === key);
        if (tab) onOpen?.(tab.id);
      }}
    >
      <div className="panel-head">
        <TabList className="tab-list" aria-label={label}>
          {tabs.map(({ id, name }) => (
            <Tab key={id} id={id} className="tab">
              {name}
            </Tab>
          ))}
        </TabList>
        {aside}
      </div>
      {tabs.map(({ id, shown }) => (
        <TabPanel key={id} id={id} className={panel}>
          {shown}
        </TabPanel>
      ))}
    </Tabs>
  );
}
