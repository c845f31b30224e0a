import { Checkbox } from 'react-aria-components/Checkbox';
import { CheckboxGroup } from 'react-aria-components/CheckboxGroup';
import { GridList, GridListItem } from 'react-aria-components/GridList';
import { Label } from 'react-aria-components/Label';
import { FITTED, USUALLY_FITTED } from '../../../boards/document/fitted';
import { stepWords } from '../../../boards/handover/steps/step-words';
import { doCommand } from '../../do-command';
import { Button } from '../../look/button';
import { FITTED_WORDS } from '../../words/fitted-words';
import { useBuild, useWorkbench } from '../../workbench';
import { useSteps, useTick } from './use-steps';

/** What the machine has, and what is to be done, in order. */
export function StepsShelf() {
  return (
    <section className="shelf steps-shelf" aria-label="Steps">
      <StepList />
      <WhatItHas />
    </section>
  );
}

function StepList() {
  const workbench = useWorkbench();
  const { build, steps, done, shown } = useSteps();
  const tick = useTick();
  const choose = (id: string) => workbench.session.getState().showStep(id);
  return (
    <>
      <header className="panel-head">
        <h2>Steps</h2>
        <p className="soft small">
          {done.size} of {steps.length} done
        </p>
      </header>
      <GridList
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

function WhatItHas() {
  const workbench = useWorkbench();
  const { fitted = USUALLY_FITTED } = useBuild();
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
    </CheckboxGroup>
  );
}
