import { type KeyboardEvent, useState } from 'react';
import { Dialog } from 'react-aria-components/Dialog';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { percent } from '../../../../boards/base/percent';
import { CAUSES } from '../../../../boards/diagnosis/faults/causes';
import type { ObservationId } from '../../../../boards/diagnosis/observations/observations';
import { useWorkbench } from '../../../workbench';
import { useUndoKeys } from '../../document/undo-here';
import { answer, noteResult } from '../doings';
import { useShownTrial } from '../next/use-shown-trial';
import type { Diagnosis } from '../use-diagnosis';
import { LargeQuestion } from './large-question';
import { LargeResults } from './large-results';
import { LargeStop } from './large-stop';
import '../../hand-over/large/large-steps.css';
import './large-trial.css';

/** A look that tells less than this is not asked for before a trial. */
const WORTH_A_LOOK_BITS = 0.05;
/** Suspects that are told at the top. */
const TOLD = 2;

interface LargeTrialProps {
  readonly diagnosis: Diagnosis;
  readonly onClose: () => void;
}

/**
 * What to do next over the whole window, in letters to be read from two metres: the most telling question, then the
 * best trial. Y and N answer, S puts a question off, 1 to 9 are the results of a trial, Escape leaves.
 */
export function LargeTrial({ diagnosis, onClose }: LargeTrialProps) {
  const workbench = useWorkbench();
  const [skipped, setSkipped] = useState<readonly ObservationId[]>([]);
  const { next, awaited, stops } = diagnosis;
  const shown = useShownTrial(diagnosis);
  useUndoKeys();
  const look = (next?.looks ?? []).find(
    ({ id, gainBits }) => !skipped.includes(id) && gainBits >= WORTH_A_LOOK_BITS,
  );
  const answerKey = (key: string): boolean => {
    // A key pressed twice is no answer to the question after.
    if (stops.length > 0 || awaited.has('next')) return false;
    if (look !== undefined) {
      if (key === 'y') answer(workbench, look.id, 'yes');
      else if (key === 'n') answer(workbench, look.id, 'no');
      else if (key === 's') setSkipped([...skipped, look.id]);
      else return false;
      return true;
    }
    const result = shown?.reasoned.results[Number(key) - 1]?.result;
    if (shown === undefined || result === undefined) return false;
    noteResult(workbench, shown.trial, result);
    return true;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || !answerKey(event.key.toLowerCase())) return;
    event.preventDefault();
  };
  return (
    <ModalOverlay className="large-shade" isOpen onOpenChange={(open) => !open && onClose()}>
      <Modal className="large-modal">
        <Dialog className="large-steps large-trial">
          {/* biome-ignore lint/a11y/noStaticElementInteractions: keys of the whole dialog, whichever button has the focus */}
          <div className="large-inside" onKeyDown={onKeyDown}>
            <header className="large-head">
              {headWords(diagnosis).map((words) => (
                <p key={words}>{words}</p>
              ))}
            </header>
            {stops.length > 0 ? (
              <LargeStop stops={stops} onClose={onClose} />
            ) : look ? (
              <LargeQuestion
                id={look.id}
                onAnswer={(said) => answer(workbench, look.id, said)}
                onSkip={() => setSkipped([...skipped, look.id])}
                onClose={onClose}
              />
            ) : (
              <LargeResults diagnosis={diagnosis} shown={shown} onClose={onClose} />
            )}
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** What is likeliest now, or that it is none of these. */
function headWords(diagnosis: Diagnosis): readonly string[] {
  const { believed, stops } = diagnosis;
  if (stops.length > 0) return [];
  if (believed === null) return ['Working out what each fault would show.'];
  if (believed.noneLikeliest) return [`None of the known faults: ${percent(believed.noneOfThese)}`];
  return believed.suspects.slice(0, TOLD).map(({ cause, chance }) => `${CAUSES[cause]}: ${percent(chance)}`);
}
