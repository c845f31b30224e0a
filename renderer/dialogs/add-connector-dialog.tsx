import { CONNECTOR_TYPES } from '../../boards/library/connectors/index';
import { makeConnector } from '../../boards/library/make-connector';
import { doCommand } from '../do-command';
import { freshId } from '../files/file-name';
import { Window } from '../look/window';
import { shapeWords } from '../words/plug-words';
import { useBuild, useWorkbench } from '../workbench';
import { freeRow } from './free-row';
import { type SearchEntry, SearchList } from './search-list';

/** Every connector the trade has standard words for; choosing one puts it on the board. */
export function AddConnectorDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const build = useBuild();
  const { connectors } = build.board;
  const add = (typeId: string, title: string) => {
    const id = freshId(title, 'connector', new Set(connectors.map((connector) => connector.id)));
    const place = { xMm: 10, yMm: freeRow(connectors), turn: 0 as const };
    const connector = makeConnector(typeId, { id, print: '', place });
    if (!doCommand(workbench, { name: 'add-connector', args: { connector } })) return;
    const { select, showPage } = workbench.session.getState();
    select({ kind: 'connector', connector: id });
    showPage('connector');
  };
  const entries = CONNECTOR_TYPES.map(
    ({ id, title, sources, connector }): SearchEntry => ({
      id,
      title,
      words: `${shapeWords(connector)}, ${sources[0] ?? 'common practice, no source'}`,
      run: () => {
        onClose();
        add(id, title);
      },
    }),
  );
  return (
    <Window title="Add a connector" onClose={onClose}>
      <SearchList
        label="Search connectors"
        placeholder="Panel, USB, fan, audio…"
        entries={entries}
        empty="The library has no connector of that name."
      />
    </Window>
  );
}
