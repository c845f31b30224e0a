import { ChevronRight, Plus } from 'lucide-react';
import { useState } from 'react';
import { Button as PlainButton } from 'react-aria-components/Button';
import { Collection } from 'react-aria-components/Collection';
import { Tree, TreeItem, TreeItemContent } from 'react-aria-components/Tree';
import { analyse } from '../../../../boards/analyse';
import type { Build } from '../../../../boards/document/build';
import type { Connector } from '../../../../boards/document/connector';
import { unitOf, unitsOf, unitWith } from '../../../../boards/document/lookup';
import type { Unit } from '../../../../boards/document/unit';
import type { Severity } from '../../../../boards/findings/finding';
import { Button } from '../../../look/button';
import { SeveritySign } from '../../../look/severity-sign';
import { worst } from '../../../words/severity-words';
import { onSocketWords, socketName, socketWords, unitWords } from '../../../words/unit-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';

/** Supply, drives, cards and hubs with their connectors, and what sits on each. Enter opens one. */
export function UnitsList() {
  const { session } = useWorkbench();
  const build = useBuild();
  const units = unitsOf(build);
  const selection = useSession((now) => now.selection);
  const [folded, setFolded] = useState<ReadonlySet<string>>(new Set());
  const open = (key: string) => {
    const unit = unitOf(build, key) ?? unitWith(build, key);
    if (unit === undefined) return;
    const connector = key === unit.id ? undefined : key;
    session.getState().openDialog({ kind: 'unit', unit: unit.id, ...(connector && { connector }) });
  };
  return (
    <>
      <Tree
        className="shelf-list units-list"
        aria-label="Units"
        items={units}
        dependencies={[build]}
        selectionMode="single"
        selectionBehavior="replace"
        expandedKeys={units.map(({ id }) => id).filter((id) => !folded.has(id))}
        onExpandedChange={(keys) =>
          setFolded(new Set(units.map(({ id }) => id).filter((id) => !keys.has(id))))
        }
        selectedKeys={selection.kind === 'connector' ? [selection.connector] : []}
        onSelectionChange={(keys) => {
          const key = keys === 'all' ? undefined : [...keys][0];
          if (typeof key === 'string' && unitWith(build, key))
            session.getState().select({ kind: 'connector', connector: key });
        }}
        onAction={(key) => {
          if (typeof key === 'string') open(key);
        }}
        renderEmptyState={() => (
          <p className="soft window-list-empty">
            No supply, drive, card or hub yet. Add the supply first: every wire of its cables is then followed
            to the pin that it feeds.
          </p>
        )}
      >
        {(unit) => <UnitItem build={build} unit={unit} />}
      </Tree>
      <div className="shelf-foot">
        <Button onPress={() => session.getState().openDialog({ kind: 'add-unit' })}>
          <Plus size={16} aria-hidden="true" />
          Add a unit…
        </Button>
      </div>
    </>
  );
}

function UnitItem({ build, unit }: { readonly build: Build; readonly unit: Unit }) {
  const words = unitWords(unit);
  return (
    <TreeItem id={unit.id} textValue={`${unit.name}, ${words}`} className="tree-row">
      <TreeItemContent>
        <PlainButton slot="chevron" className="tree-chevron">
          <ChevronRight size={18} aria-hidden="true" />
        </PlainButton>
        <span className="lead-row-words">
          <span className="lead-name">{unit.name}</span>
          <span className="soft small">{words}</span>
        </span>
      </TreeItemContent>
      <Collection items={unit.connectors}>
        {(connector) => <SocketItem build={build} connector={connector} />}
      </Collection>
    </TreeItem>
  );
}

function SocketItem({ build, connector }: { readonly build: Build; readonly connector: Connector }) {
  const name = socketName(connector);
  const there = onSocketWords(build, connector.id);
  const severity = severityAt(build, connector.id);
  return (
    <TreeItem
      id={connector.id}
      textValue={`${name}, ${socketWords(connector)}, ${there}`}
      className="tree-row tree-row-pin unit-socket"
    >
      <TreeItemContent>
        <span className="lead-row-words">
          <span className="mono">{name}</span>
          <span className="soft small">{there}</span>
        </span>
        {severity && <SeveritySign severity={severity} spoken />}
      </TreeItemContent>
    </TreeItem>
  );
}

/** The worst that is found on a connector, notes left out. */
function severityAt(build: Build, connector: string): Severity | null {
  const there = analyse(build).findings.filter(
    ({ severity, pins }) => severity !== 'note' && pins.some((pin) => pin.connector === connector),
  );
  return worst(there);
}
