import { boardRemarks } from '../../../../boards/fit/board-remarks';
import { keyed } from '../../../look/keyed';
import { SeveritySign } from '../../../look/severity-sign';
import { PLAN_CLEAR_WORDS, planRemarkWords } from '../../../words/plan-words';
import { useBuild } from '../../../workbench';

/** What on the plan cannot be so, in words. Its room is kept, so that nothing moves when something is said. */
export function PlanSaid() {
  const build = useBuild();
  const said = planRemarkWords(build, boardRemarks(build.board));
  const isClear = said.length === 0;
  const { connectors, outline } = build.board;
  const isEmpty = connectors.length === 0 && (outline.holes ?? []).length === 0;
  return (
    <section className="plan-said" aria-label="Look again">
      {isClear ? (
        <p className="soft">{isEmpty ? '\u00a0' : PLAN_CLEAR_WORDS}</p>
      ) : (
        <ul>
          {keyed(said).map(([key, words]) => (
            <li key={key} className="plan-remark">
              <SeveritySign severity="doubt" />
              <span>{words}</span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
