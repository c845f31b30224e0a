import { useState } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import { anyConnectorOf } from '../../../../boards/document/lookup';
import {
  disputedPins,
  guessedPins,
  guessSureness,
  MOST_SURE,
  STEP,
} from '../../../../boards/pinout/looks-like/guess';
import { asGoodAs } from '../../../../boards/pinout/looks-like/likeness';
import { outcomeWords } from '../../../../boards/pinout/looks-like/looks-like-words';
import { doCommand } from '../../../do-command';
import { Button } from '../../../look/button';
import { NumberLine } from '../../../look/number-line';
import { Tick } from '../../../look/tick';
import { Window } from '../../../look/window';
import { counted } from '../../../words/list-words';
import { useBuild, useWorkbench } from '../../../workbench';
import { Candidates } from './candidates';
import { Comparison } from './comparison';
import { type Candidate, useCandidates } from './use-candidates';
import { useOwnLayouts } from './use-own-layouts';
import '../document.css';
import './looks-like.css';

interface LooksLikeDialogProps {
  readonly connector: string;
  readonly onClose: () => void;
}

/** A half-filled header beside everything known; one press fills in the rest as guesses. */
export function LooksLikeDialog({ connector: id, onClose }: LooksLikeDialogProps) {
  const connector = anyConnectorOf(useBuild(), id);
  return connector && <Dialog connector={connector} onClose={onClose} />;
}

function Dialog({ connector, onClose }: { readonly connector: Connector; readonly onClose: () => void }) {
  const own = useOwnLayouts();
  const { result, candidates } = useCandidates(useBuild(), connector, own.layouts);
  const [chosen, setChosen] = useState('');
  const candidate = candidates.find(({ id }) => id === chosen) ?? candidates[0];
  const closing = <Button onPress={onClose}>Close</Button>;
  const title = `What ${connector.print || connector.title} looks like`;
  if (candidate === undefined)
    return (
      <Window title={title} onClose={onClose} doings={closing}>
        <p>{outcomeWords(connector, result)}</p>
      </Window>
    );
  return (
    <Window
      title={title}
      size="wide"
      onClose={onClose}
      doings={
        result.outcome === 'found' ? (
          <Filling
            key={candidate.id}
            connector={connector}
            candidate={candidate}
            asGood={asGoodAs(candidate.likeness, result.likenesses)}
            onClose={onClose}
          />
        ) : (
          closing
        )
      }
    >
      <div className="looks-like-outcome">
        <p>{outcomeWords(connector, result)}</p>
        <p className="soft small">{own.words}</p>
      </div>
      <div className="looks-like">
        <Candidates candidates={candidates} chosen={candidate.id} onChoose={setChosen} />
        <Comparison key={candidate.id} connector={connector} candidate={candidate} />
      </div>
    </Window>
  );
}

interface FillingProps {
  readonly connector: Connector;
  readonly candidate: Candidate;
  /** How many layouts match as well or better. */
  readonly asGood: number;
  readonly onClose: () => void;
}

/** How sure the guesses are, whether the other word is kept where two pins differ, and the button that does it. */
function Filling({ connector, candidate: { likeness, places }, asGood, onClose }: FillingProps) {
  const workbench = useWorkbench();
  const [sureness, setSureness] = useState(guessSureness(likeness, asGood));
  const [alsoDisputed, setAlsoDisputed] = useState(false);
  const guesses = guessedPins(places, likeness.layout, sureness);
  const disputed = disputedPins(places, likeness.layout);
  const pins = [...guesses, ...(alsoDisputed ? disputed : [])];
  const fill = () => {
    if (doCommand(workbench, { name: 'fill-pins', args: { connector: connector.id, pins } })) onClose();
  };
  return (
    <>
      <div className="looks-like-terms">
        <NumberLine
          label="How sure, from 0 to 0.5"
          value={sureness}
          min={0}
          max={MOST_SURE}
          step={STEP}
          onDone={setSureness}
        />
        {disputed.length > 0 && (
          <Tick on={alsoDisputed} onChange={setAlsoDisputed}>
            {`Also note what it says of ${counted(disputed.length, 'pin that differs', 'pins that differ')}`}
          </Tick>
        )}
      </div>
      <Button onPress={onClose}>Cancel</Button>
      <Button kind="main" disabled={pins.length === 0} onPress={fill}>
        {fillWords(guesses.length, alsoDisputed ? disputed.length : 0)}
      </Button>
    </>
  );
}

function fillWords(guesses: number, disputed: number): string {
  if (guesses === 0) return disputed === 0 ? 'Nothing to fill in' : `Note ${counted(disputed, 'difference')}`;
  const filled = `Fill ${counted(guesses, 'pin as a guess', 'pins as guesses')}`;
  return disputed === 0 ? filled : `${filled}, note ${counted(disputed, 'difference')}`;
}
