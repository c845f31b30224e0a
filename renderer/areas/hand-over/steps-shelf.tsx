import { type KeyboardEvent, useEffect, useRef } from 'react';
import { Checkbox } from 'react-aria-components/Checkbox';
import { CheckboxGroup } from 'react-aria-components/CheckboxGroup';
import { GridList, GridListItem } from 'react-aria-components/GridList';
import { Label } from 'react-aria-components/Label';
import { FITTED } from '../../../boards/document/fitted';
import { fittedOf } from '../../../boards/handover/steps/fitted-of';
import { stepWords } from '../../../boards/handover/steps/step-words';
import { doCommand } from '../../do-command';
import { Button } from '../../look/button';
import { ShelfTabs } from '../../look/shelf-tabs';
import { FITTED_WORDS } from '../../words/fitted-words';
import { useBuild, useWorkbench } from '../../workbench';
import { useSteps, useTick } from './use-steps';

/** What is to be done, in order, and what the machine has, on which that depends. */
export function StepsShelf() {
  const { steps, done } = useSteps();
  return (
    <section className="shelf" aria-label="Steps and machine">
      <ShelfTabs
        label="Steps and machine"
        tabs={[
          { id: 'steps', name: 'Steps', shown: <StepList /> },
          { id: 'machine', name: 'This machine', shown: <WhatItHas /> },
        ]}
        aside={
          <p className="soft small">
            {done.size} of {steps.length} done
          </p>
        }
      />
    </section>
  );
}

function StepList() {
  const workbench = useWorkbench();
  const { build, steps, done, shown } = useSteps();
  const tick = useTick();
  const list = useShownInSight(shown.id);
  // Space ticks the row that has the focus; the list itself would only choose it, which the arrows do.
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== ' ' || !(event.target instanceof Element)) return;
    const id = event.target.closest('[role="row"]')?.getAttribute('data-key');
    const step = steps.find((each) => each.id === id);
    if (step === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    tick(step, !done.has(step.id));
  };
  const choose = (id: string) => workbench.session.getState().showStep(id);
  return (
    <>
      <div className="steps-list" onKeyDownCapture={onKeyDown}>
        <GridList
          ref={list}
          className="shelf-list"
          aria-label="Steps in order"
          selectionMode="single"
          selectionBehavior="replace"
          disallowEmptySelection
          selectedKeys={[shown.id]}
          onSelectionChange={(keys) => {
            const key = keys === 'all' ? undefined : [...keys][0];
            if (typeof key === 'string') choose(key);
          }}
          onAction={(key) => choose(String(key))}
        >
          {steps.map((step, at) => {
            const { title } = stepWords(build, step);
            return (
              <GridListItem key={step.id} id={step.id} className="step-row" textValue={`${at + 1}, ${title}`}>
                <Checkbox
                  slot={null}
                  className="check"
                  aria-label={`Done: ${title}`}
                  isSelected={done.has(step.id)}
                  onChange={(on) => tick(step, on)}
                >
                  <span className="check-box" aria-hidden="true" />
                </Checkbox>
                <span className="step-row-number mono soft">{at + 1}</span>
                <span className={done.has(step.id) ? 'soft' : ''}>{title}</span>
              </GridListItem>
            );
          })}
        </GridList>
      </div>
      {(build.done ?? []).length > 0 && (
        <div className="shelf-foot">
          <Button
            onPress={() => {
              workbench.session.getState().showStep(null);
              doCommand(workbench, { name: 'tick-steps', args: { steps: build.done ?? [], done: false } });
            }}
          >
            Start again
          </Button>
        </div>
      )}
    </>
  );
}

/** Keeps the shown step in sight within its list; scrollIntoView would push the frame of the window up as well. */
function useShownInSight(id: string) {
  const list = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another step is shown, and so another row is marked
  useEffect(() => {
    const row = list.current?.querySelector('[role="row"][aria-selected="true"]');
    if (!list.current || !row) return;
    const room = list.current.getBoundingClientRect();
    const { top, bottom } = row.getBoundingClientRect();
    if (top < room.top) list.current.scrollTop -= room.top - top;
    if (bottom > room.bottom) list.current.scrollTop += bottom - room.bottom;
  }, [id]);
  return list;
}

function WhatItHas() {
  const workbench = useWorkbench();
  const fitted = fittedOf(useBuild());
  return (
    <CheckboxGroup
      className="what-it-has"
      value={[...fitted]}
      onChange={(ids) => {
        const now = FITTED.filter((each) => ids.includes(each));
        doCommand(workbench, { name: 'fit-out', args: { fitted: now } });
      }}
    >
      <Label className="what-it-has-label">What this machine has</Label>
      {FITTED.map((each) => (
        <Checkbox key={each} value={each} className="check">
          <span className="check-box" aria-hidden="true" />
          {FITTED_WORDS[each]}
        </Checkbox>
      ))}
      <p className="soft small">Steps for what the machine does not have, or has in already, are left out.</p>
    </CheckboxGroup>
  );
}
