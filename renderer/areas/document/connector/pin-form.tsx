import type { Pin } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { hasWakeJumper } from '../../../../boards/signals/stub-of';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { TextLine } from '../../../look/text-line';
import { WAKE_CHOICES } from '../../../words/pin-choices';
import { useWorkbench } from '../../../workbench';
import { OtherSources } from './other-sources';
import { MeaningFields, SourceFields } from './pin-fields';
import { PinValues } from './pin-values';
import { type PinChange, pinWith } from './pin-with';

interface PinFormProps {
  readonly connector: string;
  readonly pin: Pin;
}

/** What is known of one pin: what it does, how it is called, where that was read, and who says otherwise. */
export function PinForm({ connector, pin }: PinFormProps) {
  const workbench = useWorkbench();
  const write = (next: Pin) =>
    doCommand(workbench, { name: 'change-pins', args: { connector, pins: [next] } });
  const set = (changed: PinChange) => write(pinWith(pin, changed));
  const change = (make: (pin: Pin) => Pin) => write(make(pin));
  return (
    <section className="pin-form" aria-label={`Pin ${pin.pin}`}>
      <h3>Pin {pin.pin}</h3>
      <MeaningFields pins={[pin]} onChange={change} />
      <div className="pin-form-pair">
        <TextLine
          label="Printed on the board"
          value={pin.print ?? ''}
          maxLength={LIMITS.textLength}
          onDone={(print) => set({ print })}
        />
        <TextLine
          label="Name in the manual"
          value={pin.name ?? ''}
          maxLength={LIMITS.textLength}
          onDone={(name) => set({ name })}
        />
      </div>
      <SourceFields pins={[pin]} onChange={change} />
      <OtherSources connector={connector} pin={pin} />
      <PinValues key={pin.pin} pin={pin} onChange={(values) => set({ values })} />
      {hasWakeJumper(pin.signal ?? 'unknown') && (
        <Choice
          label="Fed by (wake jumper)"
          options={WAKE_CHOICES}
          chosen={pin.wakeSupply ?? 'unsaid'}
          onChoose={(id) => set({ wakeSupply: id === 'unsaid' ? undefined : id })}
        />
      )}
      <TextLine
        label="Notes on this pin"
        value={pin.notes ?? ''}
        maxLength={LIMITS.noteLength}
        area
        onDone={(notes) => set({ notes })}
      />
    </section>
  );
}
