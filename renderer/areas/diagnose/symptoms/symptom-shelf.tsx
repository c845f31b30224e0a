import { useMemo, useState } from 'react';
import type { NextDoings } from '../../../../boards/diagnosis/log/reckoning';
import { MOMENTS } from '../../../../boards/diagnosis/observations/observation';
import { OBSERVATIONS, observationNamed } from '../../../../boards/diagnosis/observations/observations';
import { SearchBox } from '../../../look/search-box';
import { MOMENT_WORDS } from '../../../words/trouble-words';
import { answersIn } from '../answers';
import type { Diagnosis } from '../use-diagnosis';
import { SymptomList, type SymptomSection } from './symptom-list';

/** Questions that are put first: more at once are not read. */
const FIRST = 3;

/** What there is to notice, by when it shows; the most telling questions first. */
export function SymptomShelf({ diagnosis }: { readonly diagnosis: Diagnosis }) {
  const [wanted, setWanted] = useState('');
  const { lines, next, awaited } = diagnosis;
  // A hundred questions are drawn again only where they, or their answers, are other ones.
  const answers = useMemo(() => answersIn(lines), [lines]);
  const sections = useMemo(() => sectionsWith(wanted), [wanted]);
  const first = useMemo((): readonly SymptomSection[] => [{ asked: firstLooks(next) }], [next]);
  const isFirst = wanted.trim() === '' && first.some(({ asked }) => asked.length > 0);
  return (
    <section className="shelf symptoms" aria-label="What is noticed">
      <div className="panel-head">
        <h2>What is noticed</h2>
        <p className="soft small">{`${answers.size}\u00a0answered`}</p>
      </div>
      <div className="symptom-search">
        <SearchBox
          label="Search the questions"
          placeholder="beep, smell, fan…"
          value={wanted}
          onChange={setWanted}
        />
      </div>
      <div className="symptom-scroll">
        {isFirst && (
          <section className="look-first" aria-label="Look first" aria-busy={awaited.has('next')}>
            <h3>
              Look first <span className="soft small">the answers that tell most</span>
            </h3>
            <SymptomList label="Look first" sections={first} answers={answers} />
          </section>
        )}
        {sections.length > 0 ? (
          <SymptomList label="All questions" sections={sections} answers={answers} />
        ) : (
          <p className="symptom-none">
            No question has these words. Try one word of what you see, as “fan” or “light”.
          </p>
        )}
      </div>
    </section>
  );
}

/** The questions that have all of these words, under their moments. */
function sectionsWith(wanted: string): readonly SymptomSection[] {
  const words = wanted.trim().toLowerCase().split(/\s+/);
  const found = OBSERVATIONS.filter(({ id, question, sign, codes }) => {
    const text = [id, question, sign, ...codes].join(' ').toLowerCase();
    return words.every((word) => text.includes(word));
  });
  return MOMENTS.map((moment) => ({
    title: MOMENT_WORDS[moment],
    asked: found.filter((each) => each.moment === moment),
  })).filter(({ asked }) => asked.length > 0);
}

function firstLooks(next: NextDoings | null): SymptomSection['asked'] {
  return (next?.looks ?? []).slice(0, FIRST).flatMap(({ id }) => observationNamed(id) ?? []);
}
