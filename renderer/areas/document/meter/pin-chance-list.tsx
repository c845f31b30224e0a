import { percent } from '../../../../boards/base/percent';
import type { PinChances } from '../../../../boards/pinout/meter/identification';
import { signalWords } from '../../../../boards/pinout/meter/words';
import { ChanceBar } from './chance-cell';

const SHOWN = 5;
const LEAST = 0.01;

/** What one pin could be, most probable first. */
export function PinChanceList({ told }: { readonly told: PinChances | undefined }) {
  if (told === undefined) return null;
  const rows = told.chances.filter(({ chance }, at) => at === 0 || chance >= LEAST).slice(0, SHOWN);
  return (
    <div className="meter-pin">
      <h3>What pin {told.pin} could be</h3>
      <ul className="chance-rows">
        {rows.map((row) => (
          <li key={row.signal} className="chance-row">
            <span>{signalWords(row)}</span>
            <ChanceBar chance={row.chance} />
            <span className="chance-figure">{percent(row.chance)}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
