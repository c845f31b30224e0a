import { useState } from 'react';
import type { BoardSheet } from '../../../boards/document/board-sheet';
import { count } from '../../../boards/document/problem/shown-value';
import { type Choices, takeOf } from '../../../boards/edit/compare/choices';
import type { Take } from '../../../boards/edit/compare/taking';
import { Button } from '../../look/button';
import type { ComparedRow, Said } from './compared-rows';
import { saidAfter } from './said-after';
import { TakeChoice } from './take-choice';

interface CompareTableProps {
  readonly rows: readonly ComparedRow[];
  /** What the two sheets are called at the head of their columns. */
  readonly names: readonly [mine: string, theirs: string];
  /** What is taken of each row; null where nothing can be taken over. */
  readonly choices: Choices | null;
  /** The board as it would be. */
  readonly after: BoardSheet | null;
  readonly onChoose: (key: string, take: Take) => void;
}

/** Rows that are drawn at once; a sheet may have a hundred thousand. */
const DRAWN = 300;

/** Row by row what the two sheets say, what is taken, and what would stand there then. */
export function CompareTable({ rows, names, choices, after, onChoose }: CompareTableProps) {
  const [drawn, setDrawn] = useState(DRAWN);
  const take = choices === null ? null : takeOf(choices);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls
    <section className="compare-scroll" aria-label="The two sheets" tabIndex={0}>
      <table className="compare-table">
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">{names[0]}</th>
            <th scope="col">{names[1]}</th>
            {take && <th scope="col">Taken over</th>}
            {take && <th scope="col">Afterwards</th>}
          </tr>
        </thead>
        <tbody>
          {rows.slice(0, drawn).map((row) => (
            <tr key={row.key} className={rowClass(row)}>
              <th scope="row">{row.title}</th>
              <Cell said={row.mine} />
              <Cell said={row.theirs} />
              {take && (
                <td>
                  {row.takeKey !== null && (
                    <TakeChoice
                      label={`Of ${row.title}`}
                      take={take(row.takeKey)}
                      onTake={(chosen) => row.takeKey !== null && onChoose(row.takeKey, chosen)}
                    />
                  )}
                </td>
              )}
              {take && <Cell said={saidAfter(row, after, take)} />}
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length > drawn && (
        <Button kind="link" onPress={() => setDrawn(drawn + DRAWN)}>
          Show more; {count(rows.length - drawn)} rows are left
        </Button>
      )}
    </section>
  );
}

function rowClass({ heading, differs }: ComparedRow): string {
  return [heading ? 'compare-heading' : '', differs ? 'compare-differs' : ''].join(' ').trim();
}

function Cell({ said: { main, small } }: { readonly said: Said }) {
  return (
    <td>
      {main}
      {small !== '' && <span className="soft small compare-small">{small}</span>}
    </td>
  );
}
