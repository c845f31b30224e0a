import { Check } from 'lucide-react';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import type { Connector } from '../../../boards/document/connector';
import { Button } from '../../look/button';

interface ConnectorListProps {
  readonly connectors: readonly Connector[];
  readonly chosen: ReadonlySet<string>;
  readonly onChoose: (chosen: ReadonlySet<string>) => void;
}

/** Which connectors are printed: all, or some. */
export function ConnectorList({ connectors, chosen, onChoose }: ConnectorListProps) {
  const all = () => new Set(connectors.map(({ id }) => id));
  return (
    <div className="print-connectors">
      <div className="print-connectors-head">
        <span className="field-label" id="print-connectors">
          Connectors, {chosen.size} of {connectors.length}
        </span>
        <Button kind="link" label="All of the connectors" onPress={() => onChoose(all())}>
          All
        </Button>
        <Button kind="link" label="None of the connectors" onPress={() => onChoose(new Set())}>
          None
        </Button>
      </div>
      <ListBox
        className="options print-connectors-list"
        aria-labelledby="print-connectors"
        selectionMode="multiple"
        selectedKeys={chosen}
        items={connectors}
        onSelectionChange={(keys) => onChoose(keys === 'all' ? all() : new Set([...keys].map(String)))}
      >
        {(connector) => (
          <ListBoxItem className="option" textValue={connector.print || connector.title}>
            {({ isSelected }) => (
              <>
                <span>
                  {connector.print || connector.id} <span className="soft small">{connector.title}</span>
                </span>
                {isSelected && <Check className="option-mark" size={16} aria-hidden="true" />}
              </>
            )}
          </ListBoxItem>
        )}
      </ListBox>
    </div>
  );
}
