import { type KeyboardEvent, memo } from 'react';
import { GridList, GridListHeader, GridListSection } from 'react-aria-components/GridList';
import type { Observation } from '../../../../boards/diagnosis/observations/observation';
import { type ObservationId, observationNamed } from '../../../../boards/diagnosis/observations/observations';
import { useWorkbench } from '../../../workbench';
import type { Answer } from '../answers';
import { answer } from '../doings';
import { SymptomRow } from './symptom-row';

type Asked = Observation<ObservationId>;

/** Questions under a heading; without one they stand by themselves. */
export interface SymptomSection {
  readonly title?: string;
  readonly asked: readonly Asked[];
}

interface SymptomListProps {
  readonly label: string;
  readonly sections: readonly SymptomSection[];
  readonly answers: ReadonlyMap<ObservationId, Answer>;
}

const SAID: Readonly<Record<string, 'yes' | 'no' | null>> = {
  y: 'yes',
  n: 'no',
  Delete: null,
  Backspace: null,
};

/** Questions to be answered by buttons, or by Y, N and Delete on the one that has the focus. */
export const SymptomList = memo(function SymptomList({ label, sections, answers }: SymptomListProps) {
  const workbench = useWorkbench();
  const onKeyDown = (event: KeyboardEvent) => {
    const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
    const said = SAID[key];
    if (said === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const { target } = event;
    const id =
      target instanceof Element ? target.closest('[role="row"]')?.getAttribute('data-key') : undefined;
    const asked = observationNamed(id ?? '');
    if (asked === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    answer(workbench, asked.id, said);
  };
  return (
    <div className="symptom-hold" onKeyDownCapture={onKeyDown} data-own-keys="Delete">
      <GridList className="symptom-list" aria-label={label} selectionMode="none">
        {sections.map(({ title, asked }) =>
          title === undefined ? (
            asked.map((each) => <SymptomRow key={each.id} asked={each} answer={answers.get(each.id)} />)
          ) : (
            <GridListSection key={title} aria-label={title}>
              <GridListHeader className="symptom-heading">
                {title}
                <span className="small">{countWords(asked, answers)}</span>
              </GridListHeader>
              {asked.map((each) => (
                <SymptomRow key={each.id} asked={each} answer={answers.get(each.id)} />
              ))}
            </GridListSection>
          ),
        )}
      </GridList>
    </div>
  );
});

function countWords(asked: readonly Asked[], answers: ReadonlyMap<ObservationId, Answer>): string {
  const said = asked.filter(({ id }) => answers.has(id)).length;
  return `${said}\u00a0of\u00a0${asked.length} answered`;
}
