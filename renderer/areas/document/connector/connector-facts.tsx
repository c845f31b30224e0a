import { ChevronRight } from 'lucide-react';
import { Button } from 'react-aria-components/Button';
import { Disclosure, DisclosurePanel } from 'react-aria-components/Disclosure';
import { Heading } from 'react-aria-components/Heading';
import type { Connector, Place } from '../../../../boards/document/connector';
import type { Corner } from '../../../../boards/document/grid';
import { LIMITS } from '../../../../boards/document/limits';
import { orientationOf } from '../../../../boards/drawing/orientation';
import { firstPin, placeByFirstPin } from '../../../../boards/fit/first-pin';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { LengthLine } from '../../../look/length-line';
import { TextLine } from '../../../look/text-line';
import { connectorShapeWords } from '../../../words/connector-words';
import { PLACE_BOUNDS } from '../../../words/length-words';
import { useBuild, useWorkbench } from '../../../workbench';
import { drawnCorner } from './drawn-side';
import { ShapeForm } from './shape-form';

const TURNS = [
  { id: '0', label: 'not turned' },
  { id: '90', label: 'a quarter to the right' },
  { id: '180', label: 'by half' },
  { id: '270', label: 'a quarter to the left' },
] as const;

const TURN_OF = { '0': 0, '90': 90, '180': 180, '270': 270 } as const;

/** Names, shape, place and notes of a connector, folded away under what they come to. */
export function ConnectorFacts({ connector }: { readonly connector: Connector }) {
  const { view } = useBuild();
  const drawn = (corner: Corner) => drawnCorner(corner, connector.place.turn, orientationOf(view));
  return (
    <Disclosure className="facts">
      <Heading className="facts-head" level={3}>
        <Button slot="trigger" className="facts-trigger">
          <ChevronRight size={18} aria-hidden="true" />
          <span>Names, shape and place</span>
          <span className="soft small">{connectorShapeWords(connector, drawn)}</span>
        </Button>
      </Heading>
      <DisclosurePanel className="facts-panel">
        <NameFields connector={connector} />
        <ShapeForm connector={connector} />
        <PlaceFields connector={connector} />
        <Notes connector={connector} />
      </DisclosurePanel>
    </Disclosure>
  );
}

function NameFields({ connector: { id, print, title } }: { readonly connector: Connector }) {
  const workbench = useWorkbench();
  const rename = (changed: { readonly print?: string; readonly title?: string }) =>
    doCommand(workbench, { name: 'rename-connector', args: { connector: id, print, title, ...changed } });
  return (
    <div className="form-row">
      <TextLine
        label="Print on the board"
        value={print}
        maxLength={LIMITS.textLength}
        onDone={(typed) => rename({ print: typed })}
      />
      <TextLine
        label="What it is"
        value={title}
        maxLength={LIMITS.textLength}
        onDone={(typed) => rename({ title: typed })}
      />
    </div>
  );
}

function PlaceFields({ connector }: { readonly connector: Connector }) {
  const workbench = useWorkbench();
  const { id, place } = connector;
  const first = firstPin(connector);
  const move = (to: Place) =>
    doCommand(workbench, { name: 'place-connector', args: { connector: id, place: to } });
  return (
    <div className="form-row">
      <LengthLine
        label={`Pin ${first.label} from the left, mm`}
        value={first.xMm}
        bounds={PLACE_BOUNDS}
        onDone={(xMm) => xMm !== undefined && move(placeByFirstPin(connector, { xMm }))}
      />
      <LengthLine
        label={`Pin ${first.label} from the top, mm`}
        value={first.yMm}
        bounds={PLACE_BOUNDS}
        onDone={(yMm) => yMm !== undefined && move(placeByFirstPin(connector, { yMm }))}
      />
      <Choice
        label="Turned"
        options={TURNS}
        chosen={TURNS[place.turn / 90]?.id ?? '0'}
        onChoose={(turn) => move({ ...place, turn: TURN_OF[turn] })}
      />
    </div>
  );
}

function Notes({ connector: { id, notes = '' } }: { readonly connector: Connector }) {
  const workbench = useWorkbench();
  return (
    <TextLine
      label="Notes on this connector"
      value={notes}
      maxLength={LIMITS.noteLength}
      area
      onDone={(typed) =>
        doCommand(workbench, { name: 'note-connector', args: { connector: id, notes: typed } })
      }
    />
  );
}
