import { ChevronRight } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Collection } from 'react-aria-components/Collection';
import { Tree, TreeItem, TreeItemContent } from 'react-aria-components/Tree';
import type { Build } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import { type PinRef, pinOf } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import { pinWords } from '../../../boards/document/pin-words';
import { arrivalWords } from '../../../boards/findings/words/arrival';
import { counted } from '../../words/list-words';
import { occupantWords, pinKey, plugsOn } from '../../words/occupant-words';
import { shapeWords } from '../../words/plug-words';
import { useBuild, useSession, useWorkbench } from '../../workbench';
import { seatOnPin } from './placing/hand';

/** Every connector and its pins, and who sits there: the canvas, told in words. */
export function ConnectorsTree() {
  const workbench = useWorkbench();
  const build = useBuild();
  const selection = useSession((session) => session.selection);
  const inHand = useSession((session) => session.placing !== null);
  const [expanded, setExpanded] = useState<ReadonlySet<string | number>>(new Set());

  const select = (key: string) => {
    const { connector, pin } = partsOf(key);
    workbench.session.getState().select({ kind: 'connector', connector, ...(pin !== undefined && { pin }) });
    workbench.canvas.current?.show([connector]);
  };
  const act = (key: string) => {
    const { connector: id, pin } = partsOf(key);
    const connector = build.board.connectors.find((each) => each.id === id);
    const cell = pin === undefined ? undefined : connector && gridIndex(connector.grid).cellOf(pin);
    if (inHand && cell) seatOnPin(workbench, id, [cell[0], cell[1]]);
    else select(key);
  };

  return (
    <Tree
      className="shelf-list"
      aria-label={inHand ? 'Connectors; Enter on a pin seats the first hole there' : 'Connectors'}
      items={build.board.connectors}
      dependencies={[build]}
      selectionMode="single"
      selectionBehavior="replace"
      expandedKeys={expanded}
      onExpandedChange={setExpanded}
      selectedKeys={selection.kind === 'connector' ? [keyOf(selection.connector, selection.pin)] : []}
      onSelectionChange={(keys) => {
        const key = keys === 'all' ? undefined : [...keys][0];
        if (typeof key === 'string') select(key);
      }}
      onAction={(key) => {
        if (typeof key === 'string') act(key);
      }}
    >
      {(connector) => <ConnectorItem build={build} connector={connector} />}
    </Tree>
  );
}

function keyOf(connector: string, pin?: string): string {
  return pin === undefined ? connector : pinKey({ connector, pin });
}

function partsOf(key: string): { readonly connector: string; readonly pin?: string } {
  const [connector = '', pin] = key.split('/');
  return pin === undefined ? { connector } : { connector, pin };
}

function ConnectorItem({ build, connector }: { readonly build: Build; readonly connector: Connector }) {
  const name = connector.print || connector.title;
  const plugs = plugsOn(build, connector.id).length;
  const words = `${connector.title}, ${shapeWords(connector)}, ${plugs === 0 ? 'free' : counted(plugs, 'plug')}`;
  return (
    <TreeItem id={connector.id} textValue={`${name}, ${words}`} className="tree-row">
      <TreeItemContent>
        <Button slot="chevron" className="tree-chevron">
          <ChevronRight size={18} aria-hidden="true" />
        </Button>
        <span className="lead-row-words">
          <span className="mono lead-name">{name}</span>
          <span className="soft small">{words}</span>
        </span>
      </TreeItemContent>
      <Collection items={gridIndex(connector.grid).positions.map(({ label }) => ({ id: label }))}>
        {({ id }) => <PinItem build={build} connector={connector} label={id} />}
      </Collection>
    </TreeItem>
  );
}

/** What the wires of a supply would bring there; nothing of a pin that takes no power, or that no wire is on. */
function wouldGet(build: Build, ref: PinRef): string {
  const words = arrivalWords(build, ref);
  return words === '' || words === 'nothing' ? '' : `would get ${words}`;
}

interface PinItemProps {
  readonly build: Build;
  readonly connector: Connector;
  readonly label: string;
}

function PinItem({ build, connector, label }: PinItemProps) {
  const ref = { connector: connector.id, pin: label };
  const words = pinWords(pinOf(connector, label));
  const occupant = [occupantWords(build, ref), wouldGet(build, ref)].filter((part) => part !== '').join('; ');
  return (
    <TreeItem
      id={pinKey(ref)}
      textValue={`Pin ${label}, ${words}${occupant === '' ? '' : `, ${occupant}`}`}
      className="tree-row tree-row-pin"
    >
      <TreeItemContent>
        <span className="mono tree-pin">{label}</span>
        <span className="lead-row-words">
          <span>{words}</span>
          {occupant !== '' && <span className="soft small">{occupant}</span>}
        </span>
      </TreeItemContent>
    </TreeItem>
  );
}
