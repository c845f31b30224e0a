import { listed } from '../../../../boards/base/listed';
import { percent } from '../../../../boards/base/percent';
import type { Identification } from '../../../../boards/pinout/meter/identification';
import { originWords, questionName, verdictWords } from '../../../../boards/pinout/meter/words';
import { ChanceBar } from './chance-cell';
import { standingOf } from './standing';

const SHOWN = 5;
const LEAST = 0.005;
const BOTH_COUNT = 0.05;

interface LayoutChancesProps {
  readonly found: Identification;
  readonly readings: number;
}

/** How far it has come: what is certain, the most probable whole layouts, and what tells the first two apart. */
export function LayoutChances({ found, readings }: LayoutChancesProps) {
  const { layouts, noneOfThese, pins } = found;
  const shown = layouts.filter(({ chance }, at) => at === 0 || chance >= LEAST).slice(0, SHOWN);
  const rest = 1 - noneOfThese - shown.reduce((sum, { chance }) => sum + chance, 0);
  const certain = pins.filter((pin) => standingOf(pin, layouts) === 'certain').map(({ pin }) => pin);
  return (
    <section className="meter-layouts" aria-label="Whole layouts">
      <h3>{verdictWords(found)}</h3>
      {readings > 0 && <p>{certainWords(certain, pins.length)}</p>}
      <ul className="chance-rows" aria-label="The most probable layouts">
        {shown.map((layout) => (
          <li key={layout.pins.map(({ signal }) => signal).join(' ')} className="chance-row">
            <span>{originWords(layout.origin)}</span>
            <ChanceBar chance={layout.chance} />
            <span className="chance-figure">{percent(layout.chance)}</span>
          </li>
        ))}
        {rest > LEAST && (
          <li className="chance-row soft">
            <span>other layouts together</span>
            <ChanceBar chance={rest} />
            <span className="chance-figure">{percent(rest)}</span>
          </li>
        )}
        <li className="chance-row soft">
          <span>none of these</span>
          <ChanceBar chance={noneOfThese} />
          <span className="chance-figure">{percent(noneOfThese)}</span>
        </li>
      </ul>
      <p className="soft small">{apartWords(found)}</p>
    </section>
  );
}

function certainWords(certain: readonly string[], all: number): string {
  if (certain.length === 0) return 'No pin is certain yet.';
  if (certain.length === all) return 'Every pin is certain.';
  return `Certain: ${certain.length === 1 ? 'pin' : 'pins'}\u00a0${listed(certain)}.`;
}

/** Which pins the two most probable layouts differ on, and the reading that tells just these two apart. */
function apartWords({ remaining, layouts: [first, second] }: Identification): string {
  if (remaining === undefined || remaining.pins.length === 0) return '';
  // Of two that are hardly both possible no reading tells much, though it would tell them apart.
  if (!remaining.reading && (second?.chance ?? 0) < BOTH_COUNT * (first?.chance ?? 0)) return '';
  const where = `${remaining.pins.length === 1 ? 'pin' : 'pins'}\u00a0${listed(remaining.pins)}`;
  const { reading } = remaining;
  const told = reading
    ? `What tells them apart best: ${lowered(questionName(reading.question))}.`
    : 'No safe reading tells them apart.';
  return `The two most probable layouts differ on ${where}. ${told}`;
}

function lowered(words: string): string {
  return /^[A-Z](?![A-Z])/.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words;
}
