import { Checkbox } from 'react-aria-components/Checkbox';
import { type Pin, PinZ, SOURCE_KINDS } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { SOURCE_WORDS } from '../../../../boards/document/pin-words';
import { hasWakeJumper } from '../../../../boards/signals/stub-of';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { TextLine } from '../../../look/text-line';
import { useWorkbench } from '../../../workbench';
import { PinValues } from './pin-values';
import { SignalChoice } from './signal-choice';

const KINDS = [
  { id: 'unsaid', label: 'not said' },
  ...SOURCE_KINDS.map((id) => ({ id, label: SOURCE_WORDS[id] })),
] as const;

const WAKE = [
  { id: 'unsaid', label: 'not said' },
  { id: 'standby', label: '+5\u00a0V standby' },
  { id: 'main', label: '+5\u00a0V, only while it runs' },
] as const;

const SURENESS = [
  { id: 'unsaid', label: 'not said', value: undefined },
  { id: 'sure', label: 'sure', value: 1 },
  { id: 'fairly', label: 'fairly sure', value: 0.8 },
  { id: 'likely', label: 'likely', value: 0.6 },
  { id: 'guess', label: 'a guess', value: 0.3 },
] as const;

function surenessOf(confidence: number | undefined): (typeof SURENESS)[number]['id'] {
  if (confidence === undefined) return 'unsaid';
  if (confidence >= 0.95) return 'sure';
  if (confidence >= 0.75) return 'fairly';
  return confidence >= 0.5 ? 'likely' : 'guess';
}

/** A pin with some fields set anew; those set to undefined are left out of the document. */
function pinWith(pin: Pin, changed: { readonly [Field in keyof Pin]?: Pin[Field] | undefined }): Pin {
  const all = Object.entries({ ...pin, ...changed }).filter(
    ([, value]) => value !== undefined && value !== '',
  );
  return PinZ.parse(Object.fromEntries(all));
}

/** What is known of one pin, and where it was read. */
export function PinForm({ connector, pin }: { readonly connector: string; readonly pin: Pin }) {
  const workbench = useWorkbench();
  const change = (changed: Parameters<typeof pinWith>[1]) =>
    doCommand(workbench, { name: 'change-pin', args: { connector, pin: pinWith(pin, changed) } });
  const { source } = pin;
  return (
    <section className="pin-form" aria-label={`Pin ${pin.pin}`}>
      <h3>Pin {pin.pin}</h3>
      <Checkbox
        className="check"
        isSelected={pin.missing === true}
        onChange={(missing) => change({ missing: missing ? true : undefined })}
      >
        <span className="check-box" aria-hidden="true" />
        No pin stands here
      </Checkbox>
      <SignalChoice
        chosen={pin.signal ?? 'unknown'}
        onChoose={(signal) => change(hasWakeJumper(signal) ? { signal } : { signal, wakeSupply: undefined })}
      />
      <TextLine
        label="Name in the manual or in print"
        value={pin.name ?? ''}
        maxLength={LIMITS.textLength}
        onDone={(name) => change({ name })}
      />
      <TextLine
        label="Port, where there are several alike"
        value={pin.channel ?? ''}
        maxLength={4}
        onDone={(channel) => change({ channel: channel.toUpperCase().replace(/[^A-Z0-9]/g, '') })}
      />
      <Choice
        label="Read in"
        options={KINDS}
        chosen={source?.kind ?? 'unsaid'}
        onChoose={(kind) => change({ source: kind === 'unsaid' ? undefined : { ...source, kind } })}
      />
      {source && (
        <TextLine
          label="Where: document and page, or what was measured"
          value={source.where ?? ''}
          maxLength={LIMITS.textLength}
          onDone={(where) =>
            change({ source: where === '' ? { kind: source.kind } : { kind: source.kind, where } })
          }
        />
      )}
      <Choice
        label="How sure"
        options={SURENESS}
        chosen={surenessOf(pin.confidence)}
        onChoose={(id) => change({ confidence: SURENESS.find((each) => each.id === id)?.value })}
      />
      <PinValues key={pin.pin} pin={pin} onChange={(values) => change({ values })} />
      {hasWakeJumper(pin.signal ?? 'unknown') && (
        <Choice
          label="Fed by (wake jumper)"
          options={WAKE}
          chosen={pin.wakeSupply ?? 'unsaid'}
          onChoose={(id) => change({ wakeSupply: id === 'unsaid' ? undefined : id })}
        />
      )}
    </section>
  );
}
