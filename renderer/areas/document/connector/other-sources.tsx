import { Plus } from 'lucide-react';
import { useState } from 'react';
import type { Alternative, Pin } from '../../../../boards/document/connector';
import { LIMITS } from '../../../../boards/document/limits';
import { claimWords, sourceWords } from '../../../../boards/document/pin-words';
import { contradictions } from '../../../../boards/document/sureness';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { useWorkbench } from '../../../workbench';
import { DisputeSign } from './dispute-sign';
import { NewSource } from './new-source';
import { pinWith } from './pin-with';

interface OtherSourcesProps {
  readonly connector: string;
  readonly pin: Pin;
}

/** What other sources say of a pin: to be added, thrown out, or believed in place of the one that stands. */
export function OtherSources({ connector, pin }: OtherSourcesProps) {
  const workbench = useWorkbench();
  const [adding, setAdding] = useState(false);
  const { alternatives = [] } = pin;
  const against = new Set(contradictions(pin));
  const keep = (all: readonly Alternative[]) =>
    doCommand(workbench, {
      name: 'change-pins',
      args: { connector, pins: [pinWith(pin, { alternatives: all.length === 0 ? undefined : [...all] })] },
    });
  const believe = (alternative: number) =>
    doCommand(workbench, { name: 'believe-source', args: { connector, pin: pin.pin, alternative } });
  const full = alternatives.length >= LIMITS.alternativesPerPin;
  return (
    <section className="sources" aria-label="Other sources">
      <h4 className="field-label">Other sources</h4>
      {against.size > 0 && (
        <p className="sources-disagree">
          <DisputeSign /> The sources disagree. A lead that suits only one of them gets a doubt.
        </p>
      )}
      <ul className="sources-list">
        {alternatives.map((one, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two sources may say the same words
          <li key={at} className="source">
            <p>
              {against.has(one) && <DisputeSign />} {sourceWords(one)} says <strong>{claimWords(one)}</strong>
              {one.name !== undefined && `, called ${one.name}`}
            </p>
            <div className="source-doings">
              <Button label={`Believe ${sourceWords(one)}: ${claimWords(one)}`} onPress={() => believe(at)}>
                Believe this one
              </Button>
              <Button
                kind="quiet"
                label={`Take out ${sourceWords(one)}: ${claimWords(one)}`}
                onPress={() => keep(alternatives.filter((other) => other !== one))}
              >
                Take out
              </Button>
            </div>
          </li>
        ))}
      </ul>
      {adding ? (
        <NewSource
          onCancel={() => setAdding(false)}
          onAdd={(alternative) => {
            if (keep([...alternatives, alternative])) setAdding(false);
          }}
        />
      ) : (
        <Button disabled={full} onPress={() => setAdding(true)}>
          <Plus size={16} aria-hidden="true" />
          Another source says…
        </Button>
      )}
      {full && <p className="soft small">Of one pin a sheet holds no more than eight other sources.</p>}
    </section>
  );
}
