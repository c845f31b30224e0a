import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs';
import { anyConnectorOf, leadOf } from '../../../boards/document/lookup';
import { chosenPlug, type DocumentPage } from '../../store/session';
import { useBuild, useSession, useWorkbench } from '../../workbench';
import { FindingsPanel } from '../wire/findings-panel';
import { ConnectorForm } from './connector/connector-form';
import { DocumentShelf } from './document-shelf';
import { LeadForm } from './lead-form';
import { PlanPage } from './plan/plan-page';
import '../wire/shelf.css';
import '../wire/wire.css';
import './document.css';

const PAGES: readonly { readonly id: DocumentPage; readonly name: string }[] = [
  { id: 'plan', name: 'Board plan' },
  { id: 'connector', name: 'Connector' },
  { id: 'lead', name: 'Lead' },
];

/** What is known of board and case: connectors and pins, leads and wires, and where each was read. */
export function DocumentArea() {
  const { session } = useWorkbench();
  const page = useSession((now) => now.page);
  return (
    <div className="area wire-area document-area">
      <DocumentShelf />
      <main className="document-page" aria-label="Document">
        <Tabs
          className="document-tabs"
          selectedKey={page}
          onSelectionChange={(key) => {
            const to = PAGES.find(({ id }) => id === key);
            if (to) session.getState().showPage(to.id);
          }}
        >
          <div className="panel-head">
            <TabList className="tab-list" aria-label="Document" items={PAGES}>
              {({ name }) => <Tab className="tab">{name}</Tab>}
            </TabList>
          </div>
          <TabPanel id="plan" className="document-panel">
            <PlanPage />
          </TabPanel>
          <TabPanel id="connector" className="document-panel">
            <ChosenConnector />
          </TabPanel>
          <TabPanel id="lead" className="document-panel">
            <ChosenLead />
          </TabPanel>
        </Tabs>
      </main>
      <FindingsPanel />
    </div>
  );
}

function ChosenConnector() {
  const build = useBuild();
  const selection = useSession((session) => session.selection);
  const id = selection.kind === 'connector' ? selection.connector : undefined;
  const connector = id === undefined ? undefined : anyConnectorOf(build, id);
  if (connector === undefined || selection.kind !== 'connector')
    return (
      <p className="soft document-empty">Choose a connector on the left, or add one, to set down its pins.</p>
    );
  return <ConnectorForm key={connector.id} connector={connector} pin={selection.pin} />;
}

function ChosenLead() {
  const build = useBuild();
  const plug = chosenPlug(useSession((session) => session.selection));
  const lead = plug && leadOf(build, plug.lead);
  if (lead === undefined)
    return <p className="soft document-empty">Choose a lead on the left, or add one, to see its wires.</p>;
  return <LeadForm key={lead.id} lead={lead} />;
}
