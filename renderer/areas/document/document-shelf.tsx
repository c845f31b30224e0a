import { Plus } from 'lucide-react';
import { useState } from 'react';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import type { Build } from '../../../boards/document/build';
import { leadsOf, unitsOf, unitWith } from '../../../boards/document/lookup';
import { connectorName } from '../../../boards/document/names';
import { Button } from '../../look/button';
import { LongList, listClass } from '../../look/long-list';
import { ShelfTabs } from '../../look/shelf-tabs';
import { chosenPlug, type DocumentPage, type Selection } from '../../store/session';
import { counted } from '../../words/list-words';
import { shapeWords } from '../../words/plug-words';
import { socketName, socketWords } from '../../words/unit-words';
import { useBuild, useSession, useWorkbench, type Workbench } from '../../workbench';
import { NAMES_AND_NOTES } from './build-form';

/** Chooses something and opens the page that shows it. */
function show({ session }: Pick<Workbench, 'session'>, page: DocumentPage, selection: Selection): void {
  const { select, showPage } = session.getState();
  select(selection);
  showPage(page);
}

/** Opens the page with the names and scrolls to them, which stand below or beside the plan. */
function showNames(workbench: Workbench): void {
  show(workbench, 'plan', { kind: 'nothing' });
  requestAnimationFrame(() => {
    const heading = document.getElementById(NAMES_AND_NOTES);
    // Not scrollIntoView: it would push the frame of the window up as well.
    for (const around of ['.plan-forms', '.document-panel']) {
      const scroller = heading?.closest(around);
      if (heading && scroller)
        scroller.scrollTop += heading.getBoundingClientRect().top - scroller.getBoundingClientRect().top;
    }
  });
}

function tabOf(build: Build, selection: Selection): 'board' | 'case' | 'units' {
  if (chosenPlug(selection)) return 'case';
  return selection.kind === 'connector' && unitWith(build, selection.connector) ? 'units' : 'board';
}

/** The connectors of the board, the leads of the case, and the connectors of units. */
export function DocumentShelf() {
  const workbench = useWorkbench();
  const build = useBuild();
  const selected = useSession(({ selection }) => tabOf(build, selection));
  const [tab, setTab] = useState(selected);
  return (
    <section className="shelf" aria-label="Sheets">
      <div className="document-names">
        <Button kind="link" onPress={() => showNames(workbench)}>
          Names and notes
        </Button>
      </div>
      <ShelfTabs
        label="Sheets"
        open={tab}
        onOpen={setTab}
        tabs={[
          { id: 'board', name: 'Board', shown: <Connectors /> },
          { id: 'case', name: 'Case', shown: <Leads /> },
          { id: 'units', name: 'Units', shown: <UnitConnectors /> },
        ]}
      />
    </section>
  );
}

interface Entry {
  readonly id: string;
  readonly name: string;
  readonly words: string;
}

function Connectors() {
  const workbench = useWorkbench();
  const build = useBuild();
  const chosen = useSession(({ selection }) => (selection.kind === 'connector' ? selection.connector : null));
  return (
    <Entries
      label="Connectors of the board"
      chosen={chosen}
      empty="No connector yet. Add the ones you can see on the board, the front panel header first."
      entries={build.board.connectors.map((connector) => ({
        id: connector.id,
        name: connectorName(build, connector.id),
        words:
          connector.print === '' ? shapeWords(connector) : `${connector.title}, ${shapeWords(connector)}`,
      }))}
      onChoose={(connector) => show(workbench, 'connector', { kind: 'connector', connector })}
      add="Add a connector…"
      onAdd={() => workbench.session.getState().openDialog({ kind: 'add-connector' })}
    />
  );
}

function UnitConnectors() {
  const workbench = useWorkbench();
  const build = useBuild();
  const chosen = useSession(({ selection }) => (selection.kind === 'connector' ? selection.connector : null));
  return (
    <Entries
      label="Connectors of units"
      chosen={chosen}
      empty="No supply, drive, card or hub yet. Add one, and set down its pins from the maker’s sheet."
      entries={unitsOf(build).flatMap((unit) =>
        unit.connectors.map((connector) => ({
          id: connector.id,
          name: socketName(connector),
          words: `${unit.name}, ${socketWords(connector)}`,
        })),
      )}
      onChoose={(connector) => show(workbench, 'connector', { kind: 'connector', connector })}
      add="Add a unit…"
      onAdd={() => workbench.session.getState().openDialog({ kind: 'add-unit' })}
    />
  );
}

function Leads() {
  const workbench = useWorkbench();
  const build = useBuild();
  const chosen = useSession(({ selection }) => chosenPlug(selection)?.lead ?? null);
  return (
    <Entries
      label="Leads of the case"
      chosen={chosen}
      empty="No lead yet. Add the ones that hang in the case, one by one."
      entries={leadsOf(build).map(({ id, name, plugs, wires }) => ({
        id,
        name,
        words: `${counted(plugs.length, 'plug')}, ${counted(wires.length, 'wire')}`,
      }))}
      onChoose={(lead) => {
        const plug = leadsOf(build).find((each) => each.id === lead)?.plugs[0];
        if (plug) show(workbench, 'lead', { kind: 'plug', plug: { lead, plug: plug.id } });
      }}
      add="Add a lead…"
      onAdd={() => workbench.session.getState().openDialog({ kind: 'add-lead' })}
    />
  );
}

const ROW_PX = 60;

interface EntriesProps {
  readonly label: string;
  readonly chosen: string | null;
  readonly entries: readonly Entry[];
  readonly empty: string;
  readonly onChoose: (id: string) => void;
  readonly add: string;
  readonly onAdd: () => void;
}

function Entries({ label, chosen, entries, empty, onChoose, add, onAdd }: EntriesProps) {
  return (
    <>
      <LongList rows={entries.length} rowPx={ROW_PX} gapPx={4}>
        <ListBox
          className={listClass('shelf-list document-list', entries.length)}
          aria-label={label}
          items={entries}
          selectionMode="single"
          selectedKeys={chosen === null ? [] : [chosen]}
          onSelectionChange={(keys) => {
            const key = keys === 'all' ? undefined : [...keys][0];
            if (typeof key === 'string') onChoose(key);
          }}
          renderEmptyState={() => <p className="soft window-list-empty">{empty}</p>}
        >
          {(entry) => (
            <ListBoxItem
              id={entry.id}
              textValue={`${entry.name}, ${entry.words}`}
              className="lead-row document-row"
            >
              <span className="lead-row-words">
                <span className="mono lead-name">{entry.name}</span>
                <span className="soft small">{entry.words}</span>
              </span>
            </ListBoxItem>
          )}
        </ListBox>
      </LongList>
      <div className="shelf-foot">
        <Button onPress={onAdd}>
          <Plus size={16} aria-hidden="true" />
          {add}
        </Button>
      </div>
    </>
  );
}
