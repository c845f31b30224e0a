import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import type { Likeness } from '../../../../boards/pinout/looks-like/likeness';
import {
  fromWords,
  orientationWords,
  scoreWords,
  tallyWords,
} from '../../../../boards/pinout/looks-like/looks-like-words';
import { HeaderSketch } from './header-sketch';
import type { Candidate } from './use-candidates';

interface CandidatesProps {
  readonly candidates: readonly Candidate[];
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}

/** The known layouts that match best, each drawn small as it lies here. */
export function Candidates({ candidates, chosen, onChoose }: CandidatesProps) {
  return (
    <ListBox
      className="looks-like-list"
      aria-label="Known layouts, best match first"
      items={candidates}
      selectionMode="single"
      selectionBehavior="replace"
      disallowEmptySelection
      selectedKeys={[chosen]}
      autoFocus="first"
      onSelectionChange={(keys) => {
        const key = keys === 'all' ? undefined : [...keys][0];
        if (typeof key === 'string') onChoose(key);
      }}
    >
      {({ id, likeness, places }) => (
        <ListBoxItem id={id} textValue={spoken(likeness)} className="option looks-like-option">
          <span className="option-words">
            <span>{likeness.layout.connector.title}</span>
            <span className="soft small">{orientationWords(likeness.orientation)}</span>
            <span className="soft small">{fromWords(likeness)}</span>
            <span className="soft small">{tallyWords(likeness.tally)}</span>
          </span>
          <span className="looks-like-end">
            <span className="mono">{scoreWords(likeness.score)}</span>
            <HeaderSketch places={places} />
          </span>
        </ListBoxItem>
      )}
    </ListBox>
  );
}

function spoken({ layout, orientation, score, tally }: Likeness): string {
  return [layout.connector.title, orientationWords(orientation), scoreWords(score), tallyWords(tally)].join(
    ', ',
  );
}
