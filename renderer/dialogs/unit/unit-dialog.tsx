import { Trash2 } from 'lucide-react';
import { useState } from 'react';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import type { Build } from '../../../boards/document/build';
import { LIMITS } from '../../../boards/document/limits';
import { unitOf } from '../../../boards/document/lookup';
import type { Unit } from '../../../boards/document/unit';
import { doCommand } from '../../do-command';
import { Button } from '../../look/button';
import { Choice } from '../../look/choice';
import { TextLine } from '../../look/text-line';
import { Window } from '../../look/window';
import { onSocketWords, socketName, unitWords } from '../../words/unit-words';
import { useBuild, useWorkbench } from '../../workbench';
import { NewSocket } from './new-socket';
import { SocketPage } from './socket-page';
import './unit.css';

interface UnitDialogProps {
  readonly unit: string;
  readonly connector: string | undefined;
  readonly onClose: () => void;
}

/** One unit: its name and place, its connectors and what sits there, and the chosen one from near by. */
export function UnitDialog({ unit: id, connector: first, onClose }: UnitDialogProps) {
  const build = useBuild();
  const unit = unitOf(build, id);
  const [wanted, setWanted] = useState(first);
  if (unit === undefined) return null;
  const chosen = unit.connectors.find((each) => each.id === wanted) ?? unit.connectors[0];
  return (
    <Window title={unit.name} size="wide" onClose={onClose}>
      <div className="unit">
        <section className="unit-side" aria-label="The unit">
          <p className="soft small">{unitWords(unit)}</p>
          <UnitFields unit={unit} build={build} />
          <Sockets build={build} unit={unit} chosen={chosen?.id} onChoose={setWanted} />
          <NewSocket unit={unit} onAdded={setWanted} />
          <RemoveUnit unit={unit} onClose={onClose} />
        </section>
        {chosen ? (
          <SocketPage key={chosen.id} build={build} connector={chosen} onClose={onClose} />
        ) : (
          <p className="soft unit-empty">
            No connector yet. Add those that cables go to, and set down their pins from the maker’s sheet.
          </p>
        )}
      </div>
    </Window>
  );
}

function UnitFields({ unit: { id, name, at }, build }: { readonly unit: Unit; readonly build: Build }) {
  const workbench = useWorkbench();
  const { tray } = build.case;
  const places = tray
    ? [...(tray.supply ? [{ ...tray.supply, name: 'supply' }] : []), ...tray.bays, ...tray.points]
    : [];
  return (
    <>
      <TextLine
        label="Name"
        value={name}
        maxLength={LIMITS.textLength}
        onDone={(typed) => doCommand(workbench, { name: 'rename-unit', args: { unit: id, name: typed } })}
      />
      {places.length > 0 && (
        <Choice
          label="Place on the tray"
          options={[
            { id: '', label: 'not said' },
            ...places.map((place) => ({ id: place.id, label: place.name ?? place.id })),
          ]}
          chosen={at ?? ''}
          onChoose={(place) =>
            doCommand(workbench, { name: 'place-unit', args: { unit: id, at: place === '' ? null : place } })
          }
        />
      )}
    </>
  );
}

interface SocketsProps {
  readonly build: Build;
  readonly unit: Unit;
  readonly chosen: string | undefined;
  readonly onChoose: (connector: string) => void;
}

function Sockets({ build, unit, chosen, onChoose }: SocketsProps) {
  return (
    <ListBox
      className="unit-sockets"
      aria-label={`Connectors of ${unit.name}`}
      items={unit.connectors}
      dependencies={[build]}
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={chosen === undefined ? [] : [chosen]}
      onSelectionChange={(keys) => {
        const key = keys === 'all' ? undefined : [...keys][0];
        if (typeof key === 'string') onChoose(key);
      }}
    >
      {(connector) => {
        const there = onSocketWords(build, connector.id);
        return (
          <ListBoxItem
            id={connector.id}
            textValue={`${socketName(connector)}, ${there}`}
            className="lead-row document-row"
          >
            <span className="lead-row-words">
              <span className="mono lead-name">{socketName(connector)}</span>
              <span className="soft small">{there}</span>
            </span>
          </ListBoxItem>
        );
      }}
    </ListBox>
  );
}

function RemoveUnit({ unit, onClose }: { readonly unit: Unit; readonly onClose: () => void }) {
  const workbench = useWorkbench();
  return (
    <Button
      onPress={() => {
        if (doCommand(workbench, { name: 'remove-unit', args: { unit: unit.id } })) onClose();
      }}
    >
      <Trash2 size={16} aria-hidden="true" />
      Remove the unit
    </Button>
  );
}
