import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs';
import type { Connector } from '../../boards/document/connector';
import { blankHeader } from '../../boards/library/blank-header';
import { CONNECTOR_TYPES } from '../../boards/library/connectors/index';
import { makeConnector } from '../../boards/library/make-connector';
import { BlankHeader } from '../areas/document/connector/blank-header';
import { doCommand } from '../do-command';
import { freshId } from '../files/file-name';
import { Window } from '../look/window';
import { shapeWords } from '../words/plug-words';
import { useBuild, useWorkbench } from '../workbench';
import { freeRow } from './free-row';
import { type SearchEntry, SearchList } from './search-list';

/** Every connector the trade has standard words for, and headers of which nothing is known yet. */
export function AddConnectorDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const { connectors } = useBuild().board;
  const add = (name: string, make: (onBoard: Pick<Connector, 'id' | 'place'>) => Connector) => {
    const id = freshId(name, 'connector', new Set(connectors.map((connector) => connector.id)));
    const place = { xMm: 10, yMm: freeRow(connectors), turn: 0 as const };
    const connector = make({ id, place });
    if (!doCommand(workbench, { name: 'add-connector', args: { connector } })) return;
    const { select, showPage } = workbench.session.getState();
    select({ kind: 'connector', connector: id });
    showPage('connector');
    onClose();
  };
  const entries = CONNECTOR_TYPES.map(
    ({ id, title, sources, connector }): SearchEntry => ({
      id,
      title,
      words: `${shapeWords(connector)}, ${sources[0] ?? 'common practice, no source'}`,
      run: () => add(title, (onBoard) => makeConnector(id, { ...onBoard, print: '' })),
    }),
  );
  return (
    <Window title="Add a connector" size="large" onClose={onClose}>
      <Tabs>
        <TabList className="tab-list" aria-label="What is added">
          <Tab id="library" className="tab">
            From the library
          </Tab>
          <Tab id="blank" className="tab">
            Blank header
          </Tab>
        </TabList>
        <TabPanel id="library" className="window-tab">
          <SearchList
            label="Search connectors"
            placeholder="Panel, USB, fan, audio…"
            entries={entries}
            empty="The library has no connector of that name. A blank header takes any."
          />
        </TabPanel>
        <TabPanel id="blank" className="window-tab">
          <BlankHeader
            onAdd={(grid, print) =>
              add(print === '' ? 'header' : print, (onBoard) => blankHeader(grid, { ...onBoard, print }))
            }
          />
        </TabPanel>
      </Tabs>
    </Window>
  );
}
