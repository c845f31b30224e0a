import { Trash2 } from 'lucide-react';
import type { Connector, Place } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { pinOf } from '../../../../boards/document/lookup';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { NumberLine } from '../../../look/number-line';
import { TextLine } from '../../../look/text-line';
import { useWorkbench } from '../../../workbench';
import { WaysBar } from '../ways-bar';
import { NumberingForm } from './numbering-form';
import { PinForm } from './pin-form';
import { PinTable } from './pin-table';

const TURNS = [
  { id: '0', label: 'not turned' },
  { id: '90', label: 'a quarter to the right' },
  { id: '180', label: 'by half' },
  { id: '270', label: 'a quarter to the left' },
] as const;

const TURN_OF = { '0': 0, '90': 90, '180': 180, '270': 270 } as const;

interface ConnectorFormProps {
  readonly connector: Connector;
  readonly pin: string | undefined;
}

/** One connector of the board: its names, its place, how it is counted, its pins. */
export function ConnectorForm({ connector, pin }: ConnectorFormProps) {
  const workbench = useWorkbench();
  const { id, print, title, place } = connector;
  const rename = (changed: { readonly print?: string; readonly title?: string }) =>
    doCommand(workbench, { name: 'rename-connector', args: { connector: id, print, title, ...changed } });
  const move = (changed: Partial<Place>) =>
    doCommand(workbench, {
      name: 'place-connector',
      args: { connector: id, place: { ...place, ...changed } },
    });
  return (
    <div className="form">
      <header className="form-head">
        <h2 className="mono">{print || title}</h2>
        <Button onPress={() => doCommand(workbench, { name: 'remove-connector', args: { connector: id } })}>
          <Trash2 size={16} aria-hidden="true" />
          Remove the connector
        </Button>
      </header>
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
      <div className="form-row">
        <NumberLine
          label="From the left, mm"
          value={place.xMm}
          min={-1000}
          max={1000}
          step={0.01}
          onDone={(xMm) => move({ xMm })}
        />
        <NumberLine
          label="From the top, mm"
          value={place.yMm}
          min={-1000}
          max={1000}
          step={0.01}
          onDone={(yMm) => move({ yMm })}
        />
        <Choice
          label="Turned"
          options={TURNS}
          chosen={TURNS[place.turn / 90]?.id ?? '0'}
          onChoose={(turn) => move({ turn: TURN_OF[turn] })}
        />
        <NumberingForm connector={connector} />
      </div>
      <WaysBar />
      <div className="pins">
        <PinTable connector={connector} chosen={pin} />
        {pin === undefined ? (
          <p className="soft pin-form">Choose a pin to change what is known of it.</p>
        ) : (
          <PinForm key={pin} connector={id} pin={pinOf(connector, pin)} />
        )}
      </div>
    </div>
  );
}
