import { chosenPlug } from '../../store/session';
import { useBuild, useSession } from '../../workbench';
import { FindingsPanel } from '../wire/findings-panel';
import { BuildForm } from './build-form';
import { ConnectorForm } from './connector-form';
import { DocumentShelf } from './document-shelf';
import { LeadForm } from './lead-form';
import '../wire/shelf.css';
import '../wire/wire.css';
import './document.css';

/** What is known of board and case: connectors and pins, leads and wires, and where each was read. */
export function DocumentArea() {
  return (
    <div className="area wire-area document-area">
      <DocumentShelf />
      <main className="document-page" aria-label="Document">
        <Chosen />
      </main>
      <FindingsPanel />
    </div>
  );
}

function Chosen() {
  const build = useBuild();
  const selection = useSession((session) => session.selection);
  if (selection.kind === 'connector') {
    const connector = build.board.connectors.find((each) => each.id === selection.connector);
    if (connector) return <ConnectorForm key={connector.id} connector={connector} pin={selection.pin} />;
  }
  const plug = chosenPlug(selection);
  if (plug) {
    const lead = [...build.case.leads, ...build.extras].find((each) => each.id === plug.lead);
    if (lead) return <LeadForm key={lead.id} lead={lead} />;
  }
  return <BuildForm />;
}
