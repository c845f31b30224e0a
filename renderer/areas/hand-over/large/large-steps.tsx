import { type KeyboardEvent, useEffect, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog } from 'react-aria-components/Dialog';
import { Heading } from 'react-aria-components/Heading';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { analyse } from '../../../../boards/analyse';
import { stepWords } from '../../../../boards/handover/steps/step-words';
import { nextToDo } from '../../../../boards/handover/steps/ticks';
import { useWorkbench } from '../../../workbench';
import { FoundHere } from '../found-here';
import { StepBody } from '../step-body';
import { stepBeside, useSteps, useTick } from '../use-steps';
import { warningOf } from '../warning';
import '../hand-over.css';
import './large-steps.css';

const SCROLL_PX = 160;

/**
 * One step over the whole window, in letters to be read from two metres. Space or Enter ticks it and goes on,
 * Backspace or the arrow goes back, Escape leaves. It begins at the step that was shown, or the first to do.
 */
export function LargeSteps({ onClose }: { readonly onClose: () => void }) {
  const { session } = useWorkbench();
  const scroller = useRef<HTMLDivElement>(null);
  const all = useSteps();
  const { build, steps, done, shown } = all;
  const tick = useTick();
  const { title, cautions } = stepWords(build, shown);
  const isDone = done.has(shown.id);
  const before = stepBeside(all, -1);
  const after = stepBeside(all, 1);
  const warning = warningOf(analyse(build).findings);
  const go = (id: string | undefined) => {
    if (id !== undefined) session.getState().showStep(id);
  };
  const onward = () => {
    if (!isDone) tick(shown, true);
    if (after) go(after.id);
    else if (isDone) finish();
  };
  // Past the last step the work goes on where one was left out, or is over.
  const finish = () => {
    const left = nextToDo(build, steps);
    if (left) go(left.id);
    else onClose();
  };
  const left = steps.length - done.size;
  const atEnd = left === 0 ? 'All done, leave' : `On to what is left: ${left}`;
  const onwardWords = isDone ? (after ? 'Next' : atEnd) : after ? 'Done, next' : 'Done';
  // biome-ignore lint/correctness/useExhaustiveDependencies: another step is read from its beginning
  useEffect(() => {
    scroller.current?.scrollTo({ top: 0 });
  }, [shown.id]);
  const onKeyDown = (event: KeyboardEvent) => {
    const onButton = event.target instanceof Element && event.target.closest('button') !== null;
    if (event.key === 'Backspace' || event.key === 'ArrowLeft') go(before?.id);
    else if (event.key === 'ArrowRight') go(after?.id);
    else if (event.key === 'ArrowDown') scroller.current?.scrollBy({ top: SCROLL_PX });
    else if (event.key === 'ArrowUp') scroller.current?.scrollBy({ top: -SCROLL_PX });
    else if ((event.key === ' ' || event.key === 'Enter') && !onButton) onward();
    else return;
    event.preventDefault();
  };
  return (
    <ModalOverlay className="large-shade" isOpen onOpenChange={(open) => !open && onClose()}>
      <Modal className="large-modal">
        <Dialog className="large-steps">
          {/* biome-ignore lint/a11y/noStaticElementInteractions: keys of the whole dialog, whichever button has the focus */}
          <div className="large-inside" onKeyDown={onKeyDown}>
            <header className="large-head">
              <p>
                Step {steps.indexOf(shown) + 1} of {steps.length}
                {isDone ? ', done' : ''}
              </p>
              <p>
                {done.size} of {steps.length} done
              </p>
            </header>
            {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what does not fit is scrolled to by keys */}
            <section ref={scroller} className="large-scroll" aria-label="What to do" tabIndex={0}>
              {warning && <p className="large-warning">{warning.words}</p>}
              <Heading slot="title" level={2} className="large-title">
                {title}
              </Heading>
              {cautions.map((caution) => (
                <p key={caution} className="large-caution">
                  {caution}
                </p>
              ))}
              <FoundHere build={build} step={shown} />
              <StepBody build={build} step={shown} large />
            </section>
            <footer className="large-doings">
              <Button className="button large-button" onPress={onClose}>
                Leave
              </Button>
              <Button className="button large-button" isDisabled={!before} onPress={() => go(before?.id)}>
                Back
              </Button>
              {isDone && (
                <Button className="button large-button" onPress={() => tick(shown, false)}>
                  Untick
                </Button>
              )}
              <Button className="button button-main large-button large-onward" autoFocus onPress={onward}>
                {onwardWords}
              </Button>
            </footer>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
