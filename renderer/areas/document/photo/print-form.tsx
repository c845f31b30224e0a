import { useState } from 'react';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { TextField } from 'react-aria-components/TextField';
import type { Connector, Pin } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { Tick } from '../../../look/tick';
import { useWorkbench } from '../../../workbench';
import { SignalChoice } from '../connector/signal-choice';
import { type PrintRead, printCommand } from './print-pin';

interface PrintFormProps {
  readonly connector: Connector;
  readonly pin: Pin;
  /** The photo's title. */
  readonly title: string;
  readonly onNext: () => void;
}

/** What is printed beside the chosen pin: its name as it stands there, and what that means. */
export function PrintForm({ connector, pin, title, onNext }: PrintFormProps) {
  const workbench = useWorkbench();
  const [typed, setTyped] = useState<string | null>(null);
  const write = (read: PrintRead) => doCommand(workbench, printCommand(connector, pin.pin, read, title));
  const done = () => {
    if (typed !== null && typed !== (pin.name ?? '')) write({ name: typed });
    setTyped(null);
  };
  return (
    <section className="photo-print" aria-label={`Pin ${pin.pin}`}>
      <h3>Pin {pin.pin}</h3>
      <TextField
        className="field"
        value={typed ?? pin.name ?? ''}
        onChange={setTyped}
        onBlur={done}
        onKeyDown={(event) => {
          if (event.key === 'Enter') {
            done();
            onNext();
          } else if (event.key === 'Escape' && typed !== null) setTyped(null);
          else event.continuePropagation();
        }}
      >
        <Label className="field-label">Print beside it</Label>
        <Input maxLength={LIMITS.textLength} />
      </TextField>
      <SignalChoice
        key={pin.pin}
        chosen={pin.signal ?? 'unknown'}
        onChoose={(signal) => write({ signal, missing: false })}
      />
      <div className="photo-print-doings">
        <Tick on={pin.missing === true} onChange={(missing) => write({ missing })}>
          No pin stands here
        </Tick>
        <Button onPress={onNext}>Next pin</Button>
      </div>
    </section>
  );
}
