import { Plus } from 'lucide-react';
import { useState } from 'react';
import type { Connector } from '../../../boards/document/connector';
import { connectorsOf } from '../../../boards/document/lookup';
import type { Unit } from '../../../boards/document/unit';
import { blankOutlet } from '../../../boards/library/blank-unit';
import { CONNECTOR_TYPES } from '../../../boards/library/connectors/index';
import { rowAfterRow } from '../../../boards/library/grids';
import { makeConnector } from '../../../boards/library/make-connector';
import { doCommand } from '../../do-command';
import { freshId } from '../../files/file-name';
import { Button } from '../../look/button';
import { Choice } from '../../look/choice';
import { useBuild, useWorkbench } from '../../workbench';

/** Sockets of supplies, by their columns in two rows: common practice, no source. */
const OUTLETS = [
  { id: 'outlet-3', label: 'outlet, 2\u00a0×\u00a03', cols: 3 },
  { id: 'outlet-4', label: 'outlet, 2\u00a0×\u00a04', cols: 4 },
  { id: 'outlet-5', label: 'outlet, 2\u00a0×\u00a05', cols: 5 },
  { id: 'outlet-9', label: 'outlet, 2\u00a0×\u00a09', cols: 9 },
  { id: 'outlet-12', label: 'outlet, 2\u00a0×\u00a012', cols: 12 },
] as const;

/** What devices and hubs have: powers, data, fans. */
const ON_DEVICES: readonly string[] = [
  'sata-power-15',
  'sata-data-7',
  'peripheral-power-1x4',
  'card-power-2x3',
  'card-power-2x4',
  'cpu-power-2x4',
  'fan-1x4',
  'fan-1x3',
];

interface NewSocketProps {
  readonly unit: Unit;
  readonly onAdded: (connector: string) => void;
}

/** Gives a unit one more connector: a blank outlet, or one of the trade's. */
export function NewSocket({ unit, onAdded }: NewSocketProps) {
  const workbench = useWorkbench();
  const build = useBuild();
  const devices = CONNECTOR_TYPES.filter(({ id }) => ON_DEVICES.includes(id));
  const options = [...OUTLETS, ...devices.map(({ id, title }) => ({ id, label: title }))];
  const [kind, setKind] = useState<string>(
    unit.kind === 'supply' ? 'outlet-4' : unit.kind === 'hub' ? 'fan-1x4' : 'sata-power-15',
  );
  const add = () => {
    const outlet = OUTLETS.find(({ id }) => id === kind);
    const id = freshId(`${unit.id}-${kind}`, 'socket', new Set(connectorsOf(build).map((each) => each.id)));
    const place = { xMm: 10, yMm: 10 + 40 * unit.connectors.length, turn: 0 } as const;
    const print = outlet ? `OUTLET ${unit.connectors.length + 1}` : '';
    const connector: Connector = outlet
      ? blankOutlet(rowAfterRow(outlet.cols), { id, print, place })
      : makeConnector(kind, { id, print, place });
    if (doCommand(workbench, { name: 'add-connector', args: { connector, unit: unit.id } })) onAdded(id);
  };
  return (
    <div className="unit-new">
      <Choice label="One more connector" options={options} chosen={kind} onChoose={setKind} />
      <Button onPress={add}>
        <Plus size={16} aria-hidden="true" />
        Add
      </Button>
    </div>
  );
}
