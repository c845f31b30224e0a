import { percent } from '../../../../boards/base/percent';
import { sayingWords, shownWords } from '../../../../boards/pinout/meter-run/outcome-words';
import type { Outcome } from '../../../../boards/pinout/meter-run/outcomes';
import { ChanceBar } from './chance-cell';

const SHOWN = 5;

/** What each outcome of a reading would say. */
export function OutcomeTable({ outcomes }: { readonly outcomes: readonly Outcome[] }) {
  if (outcomes.length === 0) return null;
  return (
    <table className="outcomes">
      <thead>
        <tr>
          <th scope="col">Shows</th>
          <th scope="col">Chance</th>
          <th scope="col">Would say</th>
        </tr>
      </thead>
      <tbody>
        {outcomes.slice(0, SHOWN).map((outcome) => (
          <tr key={shownWords(outcome.shown)}>
            <th scope="row">{shownWords(outcome.shown)}</th>
            <td className="outcome-chance">
              <ChanceBar chance={outcome.chance} />
              <span className="chance-figure">{percent(outcome.chance)}</span>
            </td>
            <td>{sayingWords(outcome)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
