import { Trash2 } from 'lucide-react';
import type { Connector } from '../../../../boards/document/connector';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { useWorkbench } from '../../../workbench';
import { WaysBar } from '../ways-bar';
import { ConnectorFacts } from './connector-facts';
import { HeaderEditor } from './header-editor';
import './connector.css';

interface ConnectorFormProps {
  readonly connector: Connector;
  readonly pin: string | undefined;
}

/** One connector of the board: its pins as they lie, what is known of each, and what it is itself. */
export function ConnectorForm({ connector, pin }: ConnectorFormProps) {
  const workbench = useWorkbench();
  const { id, print, title } = connector;
  return (
    <div className="form connector-form">
      <header className="form-head">
        <h2>
          <span className="mono">{print || title}</span>
          {print !== '' && <span className="soft form-head-title">{title}</span>}
        </h2>
        <Button onPress={() => doCommand(workbench, { name: 'remove-connector', args: { connector: id } })}>
          <Trash2 size={16} aria-hidden="true" />
          Remove the connector
        </Button>
      </header>
      <ConnectorFacts connector={connector} />
      <WaysBar />
      <HeaderEditor connector={connector} pin={pin} />
    </div>
  );
}
