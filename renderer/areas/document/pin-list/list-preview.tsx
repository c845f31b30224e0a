import type { ReactNode } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import { pinOf } from '../../../../boards/document/lookup';
import { count } from '../../../../boards/document/problem/shown-value';
import type { Severity } from '../../../../boards/findings/finding';
import type { ListProblem } from '../../../../boards/pinout/pin-list/list-problem';
import { type ListWords, listProblemWords } from '../../../../boards/pinout/pin-list/list-words';
import type { ReadPin } from '../../../../boards/pinout/pin-list/reading';
import { Button } from '../../../look/button';
import { SeveritySign } from '../../../look/severity-sign';
import { type LargerShape, largerShape } from './larger-shape';
import { ReadRow } from './read-row';
import type { Meant } from './word-choice';

/** How many rows are drawn; a list that long is looked through in the connector's own table. */
const ROWS_SHOWN = 200;
const PROBLEMS_SHOWN = 12;

const GRAVITY: Readonly<Record<ListProblem['code'], Severity>> = {
  'pin-twice': 'fault',
  beyond: 'fault',
  'signal-twice': 'doubt',
  'half-pair': 'doubt',
  gaps: 'note',
  counted: 'doubt',
  'left-over': 'note',
};

interface ListPreviewProps {
  readonly connector: Connector;
  readonly pins: readonly ReadPin[];
  readonly problems: readonly ListProblem[];
  readonly onChoose: (pin: ReadPin, meant: Meant) => void;
  readonly onReshape: (shape: LargerShape) => void;
}

/** Contradictions first, then every pin of the list with what was made of its word. */
export function ListPreview({ connector, pins, problems, onChoose, onReshape }: ListPreviewProps) {
  const understood = pins.filter(({ how }) => how !== 'not-understood' && how !== 'two-meanings').length;
  const guessed = pins.filter(({ how }) => how === 'guessed').length;
  const beyond = problems.find(({ code }) => code === 'beyond');
  const shape = beyond?.code === 'beyond' ? largerShape(connector, beyond.labels) : undefined;
  return (
    <>
      <p role="status">{summaryWords(understood, guessed, pins.length)}</p>
      {problems.length > 0 && (
        <ul className="list-problems" aria-label="What contradicts itself or is left open">
          {problems.slice(0, PROBLEMS_SHOWN).map((problem) => (
            <Problem
              key={JSON.stringify(problem).slice(0, 80)}
              words={listProblemWords(problem)}
              severity={GRAVITY[problem.code]}
            >
              {problem.code === 'beyond' && shape && (
                <Button
                  onPress={() => onReshape(shape)}
                >{`Make the connector ${shape.rows} × ${shape.cols}`}</Button>
              )}
            </Problem>
          ))}
          {problems.length > PROBLEMS_SHOWN && (
            <li className="soft">{`And ${count(problems.length - PROBLEMS_SHOWN)} more.`}</li>
          )}
        </ul>
      )}
      <table className="read-table" aria-label="How each word was understood">
        <thead>
          <tr>
            <th scope="col">Pin</th>
            <th scope="col">Word in the list</th>
            <th scope="col">Understood as</th>
            <th scope="col">How</th>
          </tr>
        </thead>
        <tbody>
          {pins.slice(0, ROWS_SHOWN).map((pin) => (
            <ReadRow
              key={`${pin.label} ${pin.word}`}
              read={pin}
              known={pinOf(connector, pin.label)}
              onChoose={(meant) => onChoose(pin, meant)}
            />
          ))}
        </tbody>
      </table>
      {pins.length > ROWS_SHOWN && (
        <p className="soft">{`And ${count(pins.length - ROWS_SHOWN)} pins more, which are filled as well.`}</p>
      )}
    </>
  );
}

interface ProblemProps {
  readonly words: ListWords;
  readonly severity: Severity;
  readonly children?: ReactNode;
}

function Problem({ words: { title, advice }, severity, children }: ProblemProps) {
  return (
    <li className="list-problem">
      <SeveritySign severity={severity} spoken />
      <span>
        <span className="list-problem-title">{title}.</span> <span className="soft">{advice}</span>
      </span>
      {children}
    </li>
  );
}

function summaryWords(understood: number, guessed: number, all: number): string {
  const how = guessed === 0 ? '' : `, ${count(guessed)} of them by a guess`;
  if (understood < all)
    return `${count(understood)} of ${count(all)} words were understood${how}. What a word means can be chosen where it is not sure.`;
  return all === 1 ? 'The one word was understood.' : `All ${count(all)} words were understood${how}.`;
}
