import { useEffect, useMemo, useRef } from 'react';
import { analyse } from '../../../boards/analyse';
import type { Build } from '../../../boards/document/build';
import { type Finding, findingId } from '../../../boards/findings/finding';
import { CAUTION_SHORT } from '../../words/caution-words';
import { countsWords } from '../../words/severity-words';
import { useBuild, useSession, useWorkbench } from '../../workbench';
import { FindingItem } from './finding-item';
import { previewSeat } from './placing/preview';

interface Shown {
  readonly finding: Finding;
  /** The build whose names its words use. */
  readonly build: Build;
  readonly tense: 'is' | 'would-be' | 'would-go';
}

/** Everything that stands against power, and what the plug in the hand would change of it. */
export function FindingsPanel() {
  const build = useBuild();
  const candidate = useSession((session) => session.placing?.candidate ?? null);
  const { findings } = analyse(build);
  const shown = useMemo((): readonly Shown[] => {
    if (candidate === null) return findings.map((finding) => ({ finding, build, tense: 'is' }));
    const preview = previewSeat(build, candidate);
    const then = preview.build ?? build;
    const going = new Set(preview.going.map(findingId));
    return [
      ...preview.coming.map((finding): Shown => ({ finding, build: then, tense: 'would-be' })),
      ...findings.map(
        (finding): Shown => ({ finding, build, tense: going.has(findingId(finding)) ? 'would-go' : 'is' }),
      ),
    ];
  }, [build, candidate, findings]);
  useCountsAnnounced(findings);

  return (
    <aside className="findings" aria-label="Before power">
      <header className="panel-head">
        <h2>Before power</h2>
        <p className="soft small">{countsWords(findings)}</p>
      </header>
      {shown.length === 0 ? (
        <NothingFound />
      ) : (
        <ul className="finding-list" aria-label="Findings">
          {shown.map(({ finding, build: then, tense }) => (
            <FindingItem key={tense + findingId(finding)} finding={finding} build={then} tense={tense} />
          ))}
        </ul>
      )}
    </aside>
  );
}

function NothingFound() {
  return (
    <div className="findings-empty">
      <p>As far as the program knows this board, nothing stands against power.</p>
      <p className="soft">{CAUTION_SHORT}</p>
    </div>
  );
}

/** Says the new counts when an edit has changed them; nothing at the first look. */
function useCountsAnnounced(findings: readonly Finding[]): void {
  const { session } = useWorkbench();
  const words = countsWords(findings);
  const before = useRef(words);
  useEffect(() => {
    if (before.current === words) return;
    before.current = words;
    const { text } = session.getState().announcement;
    session.getState().announce(`${text === '' ? '' : `${text} `}Before power: ${words}.`);
  }, [session, words]);
}
