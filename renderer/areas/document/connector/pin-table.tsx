import { Cell, Column, Row, Table, TableBody, TableHeader } from 'react-aria-components/Table';
import type { Connector } from '../../../../boards/document/connector';
import { pinOf } from '../../../../boards/document/lookup';
import { gridIndex } from '../../../../boards/document/numbering';
import { confidenceWords, pinWords, sourceKindWords } from '../../../../boards/document/pin-words';
import { useWorkbench } from '../../../workbench';

interface PinTableProps {
  readonly connector: Connector;
  readonly chosen: string | undefined;
}

/** Every pin in counting order: what it is, who says so, how sure. */
export function PinTable({ connector, chosen }: PinTableProps) {
  const { session } = useWorkbench();
  const pins = gridIndex(connector.grid).positions.map(({ label }) => pinOf(connector, label));
  return (
    <Table
      className="pin-table"
      aria-label={`Pins of ${connector.print || connector.title}`}
      selectionMode="single"
      selectionBehavior="replace"
      selectedKeys={chosen === undefined ? [] : [chosen]}
      onSelectionChange={(keys) => {
        const pin = keys === 'all' ? undefined : [...keys][0];
        if (typeof pin === 'string')
          session.getState().select({ kind: 'connector', connector: connector.id, pin });
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
            <Cell>{pinWords(pin)}</Cell>
            <Cell className="soft small">{pin.missing ? '' : sourceKindWords(pin)}</Cell>
            <Cell className="soft small">{pin.missing ? '' : confidenceWords(pin.confidence)}</Cell>
          </Row>
        )}
      </TableBody>
    </Table>
  );
}
