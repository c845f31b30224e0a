import { useEffect, useMemo, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { analyse } from '../../../boards/analyse';
import type { Build } from '../../../boards/document/build';
import { type Finding, findingId } from '../../../boards/findings/finding';
import { Button } from '../../look/button';
import { CAUTION_SHORT } from '../../words/caution-words';
import { countsWords } from '../../words/severity-words';
import { useBuild, useSession, useWorkbench } from '../../workbench';
import { FindingItem } from './finding-item';
import { fitWords } from './placing/candidate-words';
import { type Preview, previewSeat } from './placing/preview';
import './findings.css';

/** So many findings are listed, the worst, and as many more whenever they are asked for. */
const AT_ONCE = 50;

/** Everything that stands against power, and what the plug in the hand would change of it. */
export function FindingsPanel() {
  const build = useBuild();
  const { findings } = analyse(build);
  const inHand = useSession((session) => session.placing !== null);
  const candidate = useSession((session) => session.placing?.candidate ?? null);
  const preview = useMemo(() => candidate && previewSeat(build, candidate), [build, candidate]);
  const [shown, setShown] = useState(AT_ONCE);
  const list = useRef<HTMLUListElement>(null);
  const going = new Set(preview?.going.map(findingId));
  useCountsAnnounced(findings);
  const showMore = () => {
    flushSync(() => setShown(shown + AT_ONCE));
    // The button may be gone with the last of them, and the focus with it.
    list.current?.children[shown]?.querySelector('button')?.focus();
  };

  return (
    <aside className="findings" aria-label="Before power">
      <header className="panel-head">
        <h2>Before power</h2>
        <p className="soft small">{countsWords(findings)}</p>
      </header>
      {inHand && <WouldBe preview={preview} />}
      {findings.length === 0 ? (
        <NothingFound />
      ) : (
        <ul ref={list} className="finding-list" aria-label="Findings">
          {findings.slice(0, shown).map((finding) => {
            const id = findingId(finding);
            const tense = going.has(id) ? 'would-go' : 'is';
            return <FindingItem key={id} finding={finding} build={build} tense={tense} />;
          })}
          {findings.length > shown && (
            <li className="finding-more">
              <Button onPress={showMore}>{moreWords(findings.length - shown)}</Button>
            </li>
          )}
        </ul>
      )}
    </aside>
  );
}

/** What would be found with the plug where it is held. Its height stays, so that nothing below it jumps. */
function WouldBe({ preview }: { readonly preview: Preview | null }) {
  const present = useBuild();
  const { coming, build } = preview ?? { coming: [], build: undefined };
  return (
    <section className="would-be" aria-label="Would be found here">
      {build === undefined || coming.length === 0 ? (
        <p className="soft">{emptyWords(preview, present)}</p>
      ) : (
        <ul>
          {coming.map((finding) => (
            <FindingItem key={findingId(finding)} finding={finding} build={build} tense="would-be" />
          ))}
        </ul>
      )}
    </section>
  );
}

/** "Show 50 more of 314", "Show the last 12". */
function moreWords(rest: number): string {
  return rest > AT_ONCE ? `Show ${AT_ONCE} more of ${rest}` : `Show the last ${rest}`;
}

function emptyWords(preview: Preview | null, present: Build): string {
  if (preview === null) return 'Held over a connector, what would be found there stands here.';
  return preview.build === undefined ? fitWords(present, preview) : 'Nothing new would be found here.';
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
    const { announcement, announce } = session.getState();
    announce(`${announcement.text} Before power: ${words}.`.trim());
  }, [session, words]);
}
