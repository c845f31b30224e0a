import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import type { Connector } from '../../../../boards/document/connector';
import { pinOf } from '../../../../boards/document/lookup';
import { gridIndex } from '../../../../boards/document/numbering';
import { pinWords } from '../../../../boards/document/pin-words';

interface PrintListProps {
  readonly connector: Connector;
  readonly chosen: string;
  readonly onChoose: (pin: string) => void;
}

/** Every pin with what is known of it, in counting order. */
export function PrintList({ connector, chosen, onChoose }: PrintListProps) {
  const pins = gridIndex(connector.grid).positions.map(({ label }) => pinOf(connector, label));
  return (
    <ListBox
      className="photo-list"
      aria-label="Pins"
      selectionMode="single"
      selectionBehavior="replace"
      disallowEmptySelection
      selectedKeys={[chosen]}
      onSelectionChange={(keys) => {
        const pin = keys === 'all' ? undefined : [...keys][0];
        if (typeof pin === 'string') onChoose(pin);
      }}
    >
      {pins.map((pin) => (
        <ListBoxItem key={pin.pin} id={pin.pin} textValue={`Pin ${pin.pin}`} className="option photo-row">
          <span className="mono photo-row-pin">{pin.pin}</span>
          <span className="photo-row-words">{pinWords(pin)}</span>
        </ListBoxItem>
      ))}
    </ListBox>
  );
}
