import { useState } from 'react';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { percent } from '../../../../boards/base/percent';
import { CAUSES, type CauseId } from '../../../../boards/diagnosis/faults/causes';
import type { Reckoning } from '../../../../boards/diagnosis/log/reckoning';
import { Button } from '../../../look/button';
import { useWorkbench } from '../../../workbench';

/** So many stand in the list at first; the rest has little left to itself. */
const FIRST = 6;

const NONE = 'none';

interface SuspectListProps {
  readonly reckoning: Reckoning;
  readonly shown: CauseId;
}

interface Row {
  readonly id: string;
  readonly words: string;
  readonly chance: number;
  /** The likeliest of the faults behind it. */
  readonly above: string | undefined;
}

/** Causes with bar and number, and that it is none of them; the chosen one is told below. */
export function SuspectList({ reckoning, shown }: SuspectListProps) {
  const { session } = useWorkbench();
  const [all, setAll] = useState(false);
  const { suspects, noneOfThese } = reckoning;
  const listed = all ? suspects : suspects.slice(0, FIRST);
  const isListed = listed.some(({ cause }) => cause === shown);
  const others = isListed ? [] : suspects.filter(({ cause }) => cause === shown);
  const rows = [...listed, ...others].map(
    ({ cause, chance, faults: [likeliest] }): Row => ({
      id: cause,
      words: CAUSES[cause],
      chance,
      above: likeliest?.name,
    }),
  );
  const none: Row = { id: NONE, words: 'none of these', chance: noneOfThese, above: undefined };
  const place = rows.findIndex(({ chance }) => chance < noneOfThese);
  const inOrder = place < 0 ? [...rows, none] : rows.toSpliced(place, 0, none);
  return (
    <>
      <ListBox
        className="suspect-list"
        aria-label="Suspects, likeliest first"
        selectionMode="single"
        selectionBehavior="replace"
        disallowEmptySelection
        selectedKeys={[shown]}
        onSelectionChange={(keys) => {
          const key = keys === 'all' ? undefined : [...keys][0];
          if (typeof key === 'string' && key !== NONE) session.getState().showSuspect(key);
        }}
      >
        {inOrder.map(({ id, words, chance, above }) => (
          <ListBoxItem
            key={id}
            id={id}
            className="suspect"
            textValue={`${words}, ${percent(chance)}`}
            isDisabled={id === NONE}
            data-none={id === NONE || undefined}
          >
            <span className="suspect-chance">{percent(chance)}</span>
            <span className="suspect-words">
              <span className="suspect-cause">{capital(words)}</span>
              {id === shown && above !== undefined && <span className="soft small">{above}</span>}
            </span>
            <span className="suspect-bar" aria-hidden="true">
              <span style={{ inlineSize: `${Math.max(0.5, chance * 100)}%` }} />
            </span>
          </ListBoxItem>
        ))}
      </ListBox>
      {suspects.length > FIRST && (
        <div className="suspects-more">
          <Button kind="link" onPress={() => setAll(!all)}>
            {all ? `Only the first ${FIRST}` : `All ${suspects.length} suspects`}
          </Button>
        </div>
      )}
    </>
  );
}

export function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
