import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs';
import type { Connector } from '../../boards/document/connector';
import { freePlace } from '../../boards/fit/free-place';
import { blankHeader } from '../../boards/library/blank-header';
import { CONNECTOR_TYPES } from '../../boards/library/connectors/index';
import { makeConnector } from '../../boards/library/make-connector';
import { BlankHeader } from '../areas/document/connector/blank-header';
import { doCommand } from '../do-command';
import { freshId } from '../files/file-name';
import { Window } from '../look/window';
import { shapeWords } from '../words/plug-words';
import { useBuild, useWorkbench } from '../workbench';
import { type SearchEntry, SearchList } from './search-list';

/** Where there is room for the first connector and its names. */
const FIRST_PLACE = { xMm: 10, yMm: 15 };

/** Every connector the trade has standard words for, and headers of which nothing is known yet. */
export function AddConnectorDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const { board } = useBuild();
  const add = (name: string, make: (onBoard: Pick<Connector, 'id' | 'place'>) => Connector) => {
    const id = freshId(name, 'connector', new Set(board.connectors.map((connector) => connector.id)));
    const made = make({ id, place: { ...FIRST_PLACE, turn: 0 } });
    const connector = { ...made, place: freePlace(board, made, FIRST_PLACE) };
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
            onAdd={(grid, names) =>
              add(names.print || names.title, (onBoard) => blankHeader(grid, { ...onBoard, ...names }))
            }
            onCancel={onClose}
          />
        </TabPanel>
      </Tabs>
    </Window>
  );
}
