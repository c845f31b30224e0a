import { ChevronRight } from 'lucide-react';
import { useState } from 'react';
import { Button as AriaButton } from 'react-aria-components/Button';
import { Disclosure, DisclosurePanel } from 'react-aria-components/Disclosure';
import { Heading } from 'react-aria-components/Heading';
import type { Connector } from '../../../../boards/document/connector';
import type { PinReading } from '../../../../boards/document/pin-reading';
import type { Identification, MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { questionWords, STATE_WORDS, stateFor } from '../../../../boards/pinout/meter/words';
import { ownRisk } from '../../../../boards/pinout/meter-run/own-risk';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { ReadLine } from '../../../look/read-line';
import { SeveritySign } from '../../../look/severity-sign';
import { minding, OWN_KINDS, type OwnKind, ownRiskWords } from '../../../words/meter-words';
import { readTolerance, toleranceFigures } from '../../../words/reading-words';
import { useWorkbench } from '../../../workbench';
import { AnswerForm } from './answer-form';

interface OwnReadingProps {
  readonly connector: Connector;
  readonly found: Identification;
  /** The pin that is chosen on the drawing. */
  readonly pin: string | null;
}

/** Any other reading: what was measured, where, and how far the meter may be off. */
export function OwnReading({ connector, found, pin }: OwnReadingProps) {
  const workbench = useWorkbench();
  const [kind, setKind] = useState<OwnKind>('ohms');
  const [chosen, setChosen] = useState<string | null>(null);
  const [otherChosen, setOther] = useState<string | null>(null);
  const [tolerance, setTolerance] = useState<number | undefined>(undefined);
  const labels = found.pins.map((each) => each.pin);
  const standing = (label: string | null) => (label !== null && labels.includes(label) ? label : undefined);
  const first = standing(chosen) ?? standing(pin) ?? labels[0] ?? '';
  const others = labels.filter((label) => label !== first);
  const other = others.find((label) => label === otherChosen) ?? others[0] ?? '';
  const question = questionOf(kind, first, other);
  const isPair = question.kind !== 'ohms' && question.kind !== 'volts';
  const risk = ownRisk(question, found);
  const options = (all: readonly string[]) => all.map((id) => ({ id, label: `pin\u00a0${id}` }));
  const note = (reading: PinReading) =>
    doCommand(workbench, {
      name: 'note-reading',
      args: { connector: connector.id, reading: isPair ? reading : tolerant(reading, tolerance) },
    });
  return (
    <Disclosure className="facts meter-own">
      <Heading level={3}>
        <AriaButton slot="trigger" className="facts-trigger">
          <ChevronRight size={16} aria-hidden="true" />
          Another reading
          <span className="soft">of your own choice</span>
        </AriaButton>
      </Heading>
      <DisclosurePanel className="facts-panel">
        <div className="form-row">
          <Choice label="What was measured" options={OWN_KINDS} chosen={kind} onChoose={setKind} />
          <Choice
            label={kind.startsWith('lamp') ? 'Long leg on' : 'At'}
            options={options(labels)}
            chosen={first}
            onChoose={setChosen}
          />
          {isPair && (
            <Choice
              label={kind.startsWith('lamp') ? 'Short leg on' : 'And'}
              options={options(others)}
              chosen={other}
              onChoose={setOther}
            />
          )}
          {!isPair && (
            <ReadLine<number | undefined>
              label="Meter may be off by, %"
              shown={tolerance === undefined ? '' : toleranceFigures(tolerance)}
              read={readTolerance}
              onDone={setTolerance}
              placeholder="5"
            />
          )}
        </div>
        {risk && (
          <p className="meter-risk" role="alert">
            <SeveritySign severity="danger" spoken />
            <span>{`${ownRiskWords(risk)} Note only what was measured before.`}</span>
          </p>
        )}
        <p className="soft small">
          {`${STATE_WORDS[stateFor(question)]} ${questionWords(question)} ${minding(question)}`}
        </p>
        <AnswerForm question={question} ready={first !== '' && (!isPair || other !== '')} onReading={note} />
      </DisclosurePanel>
    </Disclosure>
  );
}

function questionOf(kind: OwnKind, first: string, second: string): MeterQuestion {
  switch (kind) {
    case 'ohms':
      return { kind: 'ohms', pin: first };
    case 'volts-standby':
      return { kind: 'volts', pin: first, supply: 'standby' };
    case 'volts-running':
      return { kind: 'volts', pin: first, supply: 'running' };
    case 'continuity':
      return { kind: 'continuity', pins: [first, second] };
    case 'touch-standby':
      return { kind: 'touch', pins: [first, second], supply: 'standby' };
    case 'touch-running':
      return { kind: 'touch', pins: [first, second], supply: 'running' };
    case 'lamp-standby':
      return { kind: 'lamp', plus: first, minus: second, supply: 'standby' };
    case 'lamp-running':
      return { kind: 'lamp', plus: first, minus: second, supply: 'running' };
  }
}

function tolerant(reading: PinReading, tolerance: number | undefined): PinReading {
  if (tolerance === undefined || (reading.kind !== 'ohms' && reading.kind !== 'volts')) return reading;
  return { ...reading, tolerance };
}
