import { useMemo } from 'react';
import { Header } from 'react-aria-components/Header';
import { ListBox, ListBoxItem, ListBoxSection } from 'react-aria-components/ListBox';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs';
import { ListLayout, Virtualizer } from 'react-aria-components/Virtualizer';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { CablesList } from '../cables/cables-list';
import { partKey, pathSections, placeSections, type TrayRow, type TraySection } from './tray-rows';

/** Everything of the tray, as lists: the map, told in words. */
export function TrayShelf() {
  const build = useBuild();
  const { tray } = build.case;
  const places = useMemo(() => (tray === undefined ? [] : placeSections(build, tray)), [build, tray]);
  const paths = useMemo(() => (tray === undefined ? [] : pathSections(tray)), [tray]);
  return (
    <section className="shelf" aria-label="Tray">
      <Tabs className="shelf-tabs">
        <div className="panel-head">
          <TabList className="tab-list" aria-label="What the shelf lists">
            <Tab id="cables" className="tab">
              Cables
            </Tab>
            <Tab id="places" className="tab">
              Places
            </Tab>
            <Tab id="paths" className="tab">
              Paths
            </Tab>
          </TabList>
        </div>
        <TabPanel id="cables" className="tab-panel">
          <CablesList />
        </TabPanel>
        <TabPanel id="places" className="tab-panel">
          <Rows label="Places of the tray" sections={places} empty="No place yet." />
        </TabPanel>
        <TabPanel id="paths" className="tab-panel">
          <Rows
            label="Paths of the tray"
            sections={paths}
            empty="No path yet. A path joins two places of the tray along one of its sides."
          />
        </TabPanel>
      </Tabs>
    </section>
  );
}

/** Of a longer list only the rows in sight are on the page. */
const MANY = 100;
const LAYOUT = { estimatedRowSize: 52, estimatedHeadingSize: 36, padding: 8 } as const;

interface RowsProps {
  readonly label: string;
  readonly sections: readonly TraySection[];
  readonly empty: string;
}

function Rows({ label, sections, empty }: RowsProps) {
  const workbench = useWorkbench();
  const chosen = useSession(({ selection }) => (selection.kind === 'on-tray' ? selection.part : null));
  const all = sections.flatMap(({ rows }) => rows);
  const isLong = all.length > MANY;
  const choose = ({ part }: TrayRow) => {
    workbench.session.getState().select({ kind: 'on-tray', part });
    workbench.canvas.current?.show([part.id]);
  };
  const list = (
    <ListBox
      className={`shelf-list tray-list${isLong ? ' tray-list-long' : ''}`}
      aria-label={label}
      items={sections}
      selectionMode="single"
      selectionBehavior="replace"
      selectedKeys={chosen === null ? [] : [partKey(chosen)]}
      onSelectionChange={(keys) => {
        const key = keys === 'all' ? undefined : [...keys][0];
        const row = all.find((each) => each.key === key);
        if (row) choose(row);
      }}
      renderEmptyState={() => <p className="soft window-list-empty">{empty}</p>}
    >
      {({ title, rows }) => (
        <ListBoxSection id={title} items={rows}>
          <Header className="shelf-heading">
            {title}
            <span>{rows.length}</span>
          </Header>
          {rows.map((row) => (
            <ListBoxItem
              key={row.key}
              id={row.key}
              textValue={`${row.name}, ${row.words}`}
              className="lead-row tray-row"
            >
              <span className="lead-row-words">
                <span className="lead-name">{row.name}</span>
                <span className="soft small">{row.words}</span>
              </span>
            </ListBoxItem>
          ))}
        </ListBoxSection>
      )}
    </ListBox>
  );
  if (!isLong) return list;
  return (
    <Virtualizer layout={ListLayout} layoutOptions={LAYOUT}>
      {list}
    </Virtualizer>
  );
}
