import { useState } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import { anyConnectorOf } from '../../../../boards/document/lookup';
import { connectorName } from '../../../../boards/document/names';
import type { MeterQuestion } from '../../../../boards/pinout/meter/identification';
import { METER_CAUTIONS, problemWords } from '../../../../boards/pinout/meter/words';
import { Window } from '../../../look/window';
import { useBuild } from '../../../workbench';
import { layoutOf } from '../connector/header-layout';
import { UndoButton, useUndoKeys } from '../undo-here';
import { Contradictions } from './contradictions';
import { Filling } from './filling';
import { HeaderChances } from './header-chances';
import { LayoutChances } from './layout-chances';
import { OwnReading } from './own-reading';
import { PinChanceList } from './pin-chance-list';
import { Proposal } from './proposal';
import { ReadingList } from './reading-list';
import { useIdentification } from './use-identification';
import '../document.css';
import '../connector/connector.css';
import './meter.css';

interface MeterDialogProps {
  readonly connector: string;
  readonly onClose: () => void;
}

const NONE: readonly MeterQuestion[] = [];

/** The pins of a connector from readings: what they say so far, and the next one to take. */
export function MeterDialog({ connector: id, onClose }: MeterDialogProps) {
  const connector = anyConnectorOf(useBuild(), id);
  return connector && <Dialog connector={connector} onClose={onClose} />;
}

function Dialog({ connector, onClose }: { readonly connector: Connector; readonly onClose: () => void }) {
  const build = useBuild();
  const [skipped, setSkipped] = useState(NONE);
  const [pin, setPin] = useState<string | null>(null);
  const meter = useIdentification(connector, skipped);
  // An emptied line has nothing of its own to take back: there the keys are those of the readings.
  useUndoKeys((line) => line.value !== '');
  const { answer } = meter;
  const found = answer?.found.ok ? answer.found.value : null;
  const { readings = [] } = connector;
  const { rows, cols } = layoutOf(connector, build.view);
  // Upright it leaves room beside it, and would push everything else out of sight.
  const isTall = rows > 4 && cols < 4;
  return (
    <Window
      title={`${connectorName(build, connector.id)} from a meter`}
      size="wide"
      onClose={onClose}
      doings={
        <Filling
          connector={connector}
          found={found}
          ready={meter.state === 'ready'}
          readings={readings.length}
          onClose={onClose}
        />
      }
    >
      <div className="meter">
        <div className="meter-known" data-tall={isTall || undefined}>
          <HeaderChances connector={connector} found={found} pin={pin} onPin={setPin} />
          <div className="meter-told">
            {found && pin !== null && <PinChanceList told={found.pins.find((each) => each.pin === pin)} />}
            <Contradictions connector={connector} found={meter.state === 'ready' ? found : null} />
            {answer?.found.ok === false && (
              <p className="meter-problem" role="status">
                {problemWords(answer.found.problem)}
              </p>
            )}
            {found && <LayoutChances found={found} readings={readings.length} />}
            <section className="meter-readings" aria-label="Readings so far">
              <div className="form-head">
                <h3>Readings so far</h3>
                <UndoButton />
              </div>
              <ReadingList connector={connector} found={meter.state === 'ready' ? found : null} />
            </section>
          </div>
        </div>
        <div className="meter-doing">
          <Proposal
            connector={connector}
            meter={meter}
            skipped={skipped.length}
            onSkip={(question) => setSkipped([...skipped, question])}
            onUnskip={() => setSkipped(NONE)}
          />
          {found && <OwnReading connector={connector} found={found} pin={pin} />}
          <ul className="meter-mind soft small" aria-label="Cautions">
            {METER_CAUTIONS.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </div>
      </div>
    </Window>
  );
}
