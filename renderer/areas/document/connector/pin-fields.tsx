import { Checkbox } from 'react-aria-components/Checkbox';
import type { Pin } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { signalOf } from '../../../../boards/signals/signals';
import { TextLine } from '../../../look/text-line';
import { JOB_CHOICES, KIND_CHOICES, SURE_CHOICES, sureChoice } from '../../../words/pin-choices';
import { pinMissing, pinWith, pinWithSignal } from './pin-with';
import { SharedChoice } from './shared-choice';
import { type Shared, sharedOf } from './shared-value';
import { SignalChoice } from './signal-choice';

const JOBS = [{ id: 'unsaid', label: 'not said' }, ...JOB_CHOICES] as const;
const KINDS = [{ id: 'unsaid', label: 'not said' }, ...KIND_CHOICES] as const;

interface PinFieldsProps {
  /** One or several; a field shows what they have in common. */
  readonly pins: readonly Pin[];
  /** The same change to each of them. */
  readonly onChange: (change: (pin: Pin) => Pin) => void;
}

/** What a pin does and which port or job it is for: fields for one pin or for many at once. */
export function MeaningFields({ pins, onChange }: PinFieldsProps) {
  const signal = sharedOf(pins, (pin) => pin.signal ?? 'unknown');
  const missing = sharedOf(pins, (pin) => pin.missing === true);
  const channel = sharedOf(pins, (pin) => pin.channel ?? '');
  const jobless = pins.some((pin) => !pin.missing && signalOf(pin.signal ?? 'unknown').job === undefined);
  return (
    <>
      <Checkbox
        className="check"
        isSelected={missing.same && missing.value}
        isIndeterminate={!missing.same}
        onChange={(is) => onChange((pin) => pinMissing(pin, is))}
      >
        <span className="check-box" aria-hidden="true" />
        {pins.length === 1 ? 'No pin stands here' : 'No pins stand here'}
      </Checkbox>
      <SignalChoice
        chosen={signal.same ? signal.value : null}
        onChoose={(id) => onChange((pin) => pinWithSignal(pin, id))}
      />
      {jobless && (
        <SharedChoice
          label="Belongs to"
          options={JOBS}
          chosen={sharedOf(pins, (pin) => pin.belongsTo ?? 'unsaid')}
          onChoose={(id) => onChange((pin) => pinWith(pin, { belongsTo: id === 'unsaid' ? undefined : id }))}
        />
      )}
      <TextLine
        label="Port, where there are several alike"
        value={channel.same ? channel.value : ''}
        maxLength={4}
        placeholder={differ(channel)}
        onDone={(typed) =>
          onChange((pin) => pinWith(pin, { channel: typed.toUpperCase().replace(/[^A-Z0-9]/g, '') }))
        }
      />
    </>
  );
}

/** Where it was read and how sure it is. */
export function SourceFields({ pins, onChange }: PinFieldsProps) {
  const kind = sharedOf(pins, ({ source }) => source?.kind ?? 'unsaid');
  const where = sharedOf(pins, ({ source }) => source?.where ?? '');
  const sourced = pins.some(({ source }) => source !== undefined);
  return (
    <>
      <SharedChoice
        label="Read in"
        options={KINDS}
        chosen={kind}
        onChoose={(id) =>
          onChange((pin) =>
            pinWith(pin, { source: id === 'unsaid' ? undefined : { ...pin.source, kind: id } }),
          )
        }
      />
      {sourced && (
        <TextLine
          label="Where: document and page, or what was measured"
          value={where.same ? where.value : ''}
          maxLength={LIMITS.textLength}
          placeholder={differ(where)}
          onDone={(typed) =>
            onChange((pin) => {
              if (!pin.source) return pin;
              const { kind: from } = pin.source;
              return pinWith(pin, { source: typed === '' ? { kind: from } : { kind: from, where: typed } });
            })
          }
        />
      )}
      <SharedChoice
        label="How sure"
        options={SURE_CHOICES}
        chosen={sharedOf(pins, ({ confidence }) => sureChoice(confidence))}
        onChoose={(id) =>
          onChange((pin) => pinWith(pin, { confidence: SURE_CHOICES.find((each) => each.id === id)?.value }))
        }
      />
    </>
  );
}

function differ(shared: Shared<unknown>): string {
  return shared.same ? '' : 'not the same';
}
