import { useState } from 'react';
import type { Alternative, PinSource } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import type { SignalId } from '../../../../boards/signals/signals';
import { Button } from '../../../look/button';
import { Choice } from '../../../look/choice';
import { TextLine } from '../../../look/text-line';
import { KIND_CHOICES } from '../../../words/pin-choices';
import { SignalChoice } from './signal-choice';

interface NewSourceProps {
  readonly onAdd: (alternative: Alternative) => void;
  readonly onCancel: () => void;
}

/** What a further source says of a pin, and which source it is. */
export function NewSource({ onAdd, onCancel }: NewSourceProps) {
  const [signal, setSignal] = useState<SignalId | null>(null);
  const [kind, setKind] = useState<PinSource['kind']>('print');
  const [where, setWhere] = useState('');
  const add = () => {
    if (signal !== null) onAdd({ signal, source: where === '' ? { kind } : { kind, where } });
  };
  return (
    <fieldset className="new-source">
      <legend className="field-label">Another source says</legend>
      <SignalChoice label="It says" chosen={signal} onChoose={setSignal} />
      <Choice label="It is" options={KIND_CHOICES} chosen={kind} onChoose={setKind} />
      <TextLine
        label="Document and page, or what was measured"
        value={where}
        maxLength={LIMITS.textLength}
        onDone={setWhere}
      />
      <div className="source-doings">
        <Button disabled={signal === null} onPress={add}>
          Keep it beside
        </Button>
        <Button kind="quiet" onPress={onCancel}>
          Cancel
        </Button>
      </div>
    </fieldset>
  );
}
