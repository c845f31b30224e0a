import { memo } from 'react';
import { capital } from '../../../../boards/base/capital';
import { percent } from '../../../../boards/base/percent';
import { CAUSES } from '../../../../boards/diagnosis/faults/causes';
import { lineWords } from '../../../../boards/diagnosis/log/log-words';
import type { Suspect } from '../../../../boards/diagnosis/log/reckoning';
import type { Diagnosis } from '../use-diagnosis';
import { HowOften } from './how-often';

interface ReasonsProps extends Pick<Diagnosis, 'build' | 'why'> {
  /** Whether the reasons are still those of what was said before. */
  readonly awaited: boolean;
  readonly suspect: Suspect;
}

/** What of a cause is likeliest, what was said for it, against it, and of neither, and how often it is met here. */
export const Reasons = memo(function Reasons({ build, why, awaited, suspect }: ReasonsProps) {
  const { cause, faults, chance } = suspect;
  // Until the new reasons are there those for the same suspect stand, of what was said before.
  const reasons = why?.of.get(cause);
  const said = (places: readonly number[] = []) =>
    places.flatMap((at) => {
      const line = why?.lines[at];
      return line === undefined ? [] : [{ at, ...lineWords(build, line) }];
    });
  const groups = [
    { title: 'For it', sign: '+', said: said(reasons?.speaksFor) },
    { title: 'Against it', sign: '−', said: said(reasons?.speaksAgainst) },
    { title: 'Says nothing of it', sign: '·', said: said(reasons?.silent) },
  ].filter((group) => group.said.length > 0);
  return (
    <section className="reasons" aria-label={`Reasons: ${CAUSES[cause]}`} aria-busy={awaited}>
      <h3>
        {capital(CAUSES[cause])}, {percent(chance)}
      </h3>
      {faults.length > 1 && (
        <ul className="reasons-faults" aria-label="Which of them">
          {faults.map(({ id, name, chance: share }) => (
            <li key={id}>
              <span className="reasons-chance">{percent(share)}</span>
              <span>{name}</span>
            </li>
          ))}
        </ul>
      )}
      {groups.map(({ title, sign, said: lined }) => (
        <div key={title} className="reasons-group">
          <h4>{title}</h4>
          <ul>
            {lined.map(({ at, what, came }) => (
              <li key={at}>
                <span className="reasons-sign mono" aria-hidden="true">
                  {sign}
                </span>
                <span>
                  {what} <strong>{came}</strong>
                </span>
              </li>
            ))}
          </ul>
        </div>
      ))}
      <HowOften build={build} cause={cause} />
    </section>
  );
});
