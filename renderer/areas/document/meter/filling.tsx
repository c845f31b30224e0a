import { useState } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import type { Identification } from '../../../../boards/pinout/meter/identification';
import { measuredPins } from '../../../../boards/pinout/meter-run/measured-pins';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { NumberLine } from '../../../look/number-line';
import { Tick } from '../../../look/tick';
import { counted } from '../../../words/list-words';
import { useWorkbench } from '../../../workbench';

const USUAL_PERCENT = 90;

interface FillingProps {
  readonly connector: Connector;
  readonly found: Identification | null;
  /** Whether that rests on all readings. */
  readonly ready: boolean;
  readonly readings: number;
  readonly onClose: () => void;
}

/** From which chance on a pin is written down as measured, whether the rest is guessed, and the button that does it. */
export function Filling({ connector, found, ready, readings, onClose }: FillingProps) {
  const workbench = useWorkbench();
  const [percent, setPercent] = useState(USUAL_PERCENT);
  const [alsoGuesses, setAlsoGuesses] = useState(false);
  const told = found && readings > 0 ? measuredPins(found, readings, percent / 100) : null;
  const measured = told?.measured ?? [];
  const guesses = told?.guesses ?? [];
  const pins = [...measured, ...(alsoGuesses ? guesses : [])];
  const fill = () => {
    if (doCommand(workbench, { name: 'fill-pins', args: { connector: connector.id, pins } })) onClose();
  };
  return (
    <>
      <div className="meter-terms">
        <NumberLine label="Measured from, %" value={percent} min={50} max={99} step={1} onDone={setPercent} />
        {guesses.length > 0 && (
          <Tick on={alsoGuesses} onChange={setAlsoGuesses}>
            {`Also fill ${counted(guesses.length, 'pin below that', 'pins below that')} as guesses`}
          </Tick>
        )}
      </div>
      <Button onPress={onClose}>Close</Button>
      <Button kind="main" disabled={!ready || pins.length === 0} onPress={fill}>
        {pins.length === 0 ? 'Nothing to fill in yet' : `Fill ${counted(pins.length, 'pin')}`}
      </Button>
    </>
  );
}
