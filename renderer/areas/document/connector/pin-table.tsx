import { Cell, Column, Row, Table, TableBody, TableHeader } from 'react-aria-components/Table';
import type { Connector, Pin } from '../../../../boards/document/connector';
import { pinOf } from '../../../../boards/document/lookup';
import { gridIndex } from '../../../../boards/document/numbering';
import {
  contradictionWords,
  pinWords,
  SURENESS_WORDS,
  sourceKindWords,
} from '../../../../boards/document/pin-words';
import { surenessOf } from '../../../../boards/document/sureness';
import { DisputeSign } from './dispute-sign';
import type { PinSelection } from './selection';
import { SurenessSign } from './sureness-sign';

interface PinTableProps {
  readonly connector: Connector;
  readonly selection: PinSelection;
  readonly onSelect: (selection: PinSelection) => void;
}

/** Every pin in counting order: what it is, who says so, how sure. */
export function PinTable({ connector, selection, onSelect }: PinTableProps) {
  const labels = gridIndex(connector.grid).positions.map(({ label }) => label);
  const pins = labels.map((label) => ({ ...pinOf(connector, label), id: label }));
  return (
    <Table
      className="pin-table"
      aria-label={`Pins of ${connector.print || connector.title}`}
      selectionMode="multiple"
      selectionBehavior="replace"
      selectedKeys={selection.chosen}
      onSelectionChange={(keys) => {
        const chosen = keys === 'all' ? labels : labels.filter((label) => keys.has(label));
        const [first = selection.focus] = chosen;
        const { anchor, focus } = selection;
        const kept = chosen.includes(focus) && chosen.length > 1;
        onSelect({
          chosen: new Set(chosen),
          ...(kept ? { anchor, focus } : { anchor: first, focus: first }),
        });
      }}
    >
      <TableHeader>
        <Column>Pin</Column>
        <Column isRowHeader>Signal</Column>
        <Column>Read in</Column>
        <Column>Sure</Column>
      </TableHeader>
      <TableBody items={pins} dependencies={[connector]}>
        {(pin) => (
          <Row id={pin.pin} className="pin-row">
            <Cell className="mono">{pin.pin}</Cell>
            <Cell>
              {pinWords(pin)}
              <Disagreement pin={pin} />
            </Cell>
            <Cell className="soft small">{pin.missing && !pin.source ? '' : sourceKindWords(pin)}</Cell>
            <Cell className="soft small">
              <span className="pin-sure">
                <SurenessSign sureness={surenessOf(pin)} />
                {SURENESS_WORDS[surenessOf(pin)]}
              </span>
            </Cell>
          </Row>
        )}
      </TableBody>
    </Table>
  );
}

function Disagreement({ pin }: { readonly pin: Pin }) {
  const words = contradictionWords(pin);
  if (words === '') return null;
  return (
    <span className="pin-dispute small">
      <DisputeSign /> {words}
    </span>
  );
}
