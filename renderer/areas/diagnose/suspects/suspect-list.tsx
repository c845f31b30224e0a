import { memo, useState } from 'react';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { capital } from '../../../../boards/base/capital';
import { percent } from '../../../../boards/base/percent';
import { CAUSES, type CauseId } from '../../../../boards/diagnosis/faults/causes';
import { factorOf } from '../../../../boards/diagnosis/faults/priors';
import type { Suspects } from '../../../../boards/diagnosis/log/reckoning';
import { doubleWords } from '../../../../boards/diagnosis/words';
import type { Build } from '../../../../boards/document/build';
import { Button } from '../../../look/button';
import { weighedWords } from '../../../words/how-often-words';
import { useWorkbench } from '../../../workbench';

/** So many stand in the list at first; the rest has little left to itself. */
const FIRST = 5;

const NONE = 'none';

/** Two at once stand in the list from this chance on. */
const DOUBLE_FROM = 0.02;

interface SuspectListProps {
  readonly build: Build;
  readonly believed: Suspects;
  readonly shown: CauseId;
}

interface Row {
  readonly id: string;
  readonly words: string;
  readonly chance: number;
  /** The likeliest of the faults behind it. */
  readonly above: string | undefined;
  /** How often it is met here; undefined: as usual. */
  readonly weighed?: string | undefined;
  /** Whether the row says all there is to say of it: it cannot be chosen. */
  readonly told: boolean;
}

/** Causes with bar and number, and that it is none of them; the chosen one is told below. */
export const SuspectList = memo(function SuspectList({ build, believed, shown }: SuspectListProps) {
  const { session } = useWorkbench();
  const [all, setAll] = useState(false);
  const { suspects, noneOfThese } = believed;
  const listed = all ? suspects : suspects.slice(0, FIRST);
  const isListed = listed.some(({ cause }) => cause === shown);
  const others = isListed ? [] : suspects.filter(({ cause }) => cause === shown);
  const rows = [...listed, ...others].map(
    ({ cause, chance, faults: [likeliest] }): Row => ({
      id: cause,
      words: CAUSES[cause],
      chance,
      above: likeliest?.name,
      weighed: weighedWords(factorOf(build, cause)),
      told: false,
    }),
  );
  const doubles = believed.doubles.map(
    ({ causes, chance, names }): Row => ({
      id: causes.join(' and '),
      words: doubleWords({ causes }),
      chance,
      above: names.join(' '),
      told: true,
    }),
  );
  const none: Row = { id: NONE, words: 'none of these', chance: noneOfThese, above: undefined, told: true };
  const inOrder = [...rows, ...doubles.filter(({ chance }) => chance >= DOUBLE_FROM), none].sort(
    (a, b) => b.chance - a.chance,
  );
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
          if (typeof key === 'string') session.getState().showSuspect(key);
        }}
      >
        {inOrder.map(({ id, words, chance, above, weighed, told }) => (
          <ListBoxItem
            key={id}
            id={id}
            className="suspect"
            textValue={[words, percent(chance), weighed].filter(Boolean).join(', ')}
            isDisabled={told}
            data-none={id === NONE || undefined}
          >
            <span className="suspect-chance">{percent(chance)}</span>
            <span className="suspect-words">
              <span>
                <span className="suspect-cause">{capital(words)}</span>
                {weighed !== undefined && <span className="suspect-weighed small">{weighed}</span>}
              </span>
              {(id === shown || told) && above !== undefined && <span className="soft small">{above}</span>}
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
});
