import { Cell, Column, Row, Table, TableBody, TableHeader } from 'react-aria-components/Table';
import { pinWords } from '../../../../boards/document/pin-words';
import type { PlaceCompared } from '../../../../boards/pinout/looks-like/compare';
import { VERDICT_SIGNS, VERDICT_WORDS } from '../../../../boards/pinout/looks-like/looks-like-words';

interface PlacesTableProps {
  readonly label: string;
  readonly places: readonly PlaceCompared[];
  readonly pointed: string | null;
  readonly onPoint: (cell: string | null) => void;
}

/** The two headers pin by pin: how each place compares, what it is here, what it is there. */
export function PlacesTable({ label, places, pointed, onPoint }: PlacesTableProps) {
  const rows = places.map((place) => ({ ...place, id: String(place.cell) }));
  return (
    <Table
      className="pin-table places-table"
      aria-label={label}
      selectionMode="single"
      selectionBehavior="replace"
      selectedKeys={pointed === null ? [] : [pointed]}
      onSelectionChange={(keys) => {
        const key = keys === 'all' ? undefined : [...keys][0];
        onPoint(typeof key === 'string' ? key : null);
      }}
    >
      <TableHeader>
        <Column isRowHeader>Pin</Column>
        <Column>Compared</Column>
        <Column>Here</Column>
        <Column>There</Column>
      </TableHeader>
      <TableBody items={rows} dependencies={[places]}>
        {({ id, here, there, verdict }) => (
          <Row id={id} className={`pin-row places-row places-row-${verdict}`}>
            <Cell className="mono">{here?.pin ?? '–'}</Cell>
            <Cell>
              <span className="places-verdict">
                <span className="mono places-sign" aria-hidden="true">
                  {VERDICT_SIGNS[verdict]}
                </span>
                {VERDICT_WORDS[verdict]}
              </span>
            </Cell>
            <Cell>{here ? pinWords(here) : ''}</Cell>
            <Cell>{there ? `${there.pin}: ${pinWords(there)}` : ''}</Cell>
          </Row>
        )}
      </TableBody>
    </Table>
  );
}
