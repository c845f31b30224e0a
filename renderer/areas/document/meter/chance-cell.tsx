import type { PinChances } from '../../../../boards/pinout/meter/identification';
import { signalOf } from '../../../../boards/signals/signals';
import { SurenessSign } from '../connector/sureness-sign';
import { pinChanceWords, roughPercent, type Standing } from './standing';

const SIGNS = { certain: 'sure', likely: 'likely', open: 'unknown' } as const satisfies Record<
  Standing,
  string
>;

interface ChanceCellProps {
  readonly pin: string;
  readonly missing: boolean;
  readonly told: PinChances | undefined;
  readonly standing: Standing;
  readonly chosen: boolean;
  /** The one cell that Tab comes to. */
  readonly stop: boolean;
  readonly onPress: () => void;
}

/** A pin as a square: number, how far it is told by sign and word, its most probable signal, the chance as bar and figure. */
export function ChanceCell({ pin, missing, told, standing, chosen, stop, onPress }: ChanceCellProps) {
  const [first] = told?.chances ?? [];
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the grid listens to the keys
    <td
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a cell that is walked to and chosen
      role="gridcell"
      className="header-cell chance-cell"
      data-pin={pin}
      data-missing={missing || undefined}
      data-unsure={standing === 'open' || undefined}
      aria-selected={chosen}
      tabIndex={stop ? 0 : -1}
      onClick={onPress}
    >
      <span className="aside-hidden">{wordsOf(pin, missing, told, standing)}</span>
      <span className="header-cell-drawn" aria-hidden="true">
        <span className="header-cell-top">
          <span className="mono">{pin}</span>
          {!missing && told && <SurenessSign sureness={SIGNS[standing]} />}
        </span>
        <span className="header-cell-signal">
          {missing ? 'no pin' : first && signalOf(first.signal).name}
        </span>
        {!missing && first && (
          <span className="chance">
            <ChanceBar chance={first.chance} />
            <span className="chance-figure">{roughPercent(first.chance)}</span>
            <span className="chance-word">{standing}</span>
          </span>
        )}
      </span>
    </td>
  );
}

function wordsOf(pin: string, missing: boolean, told: PinChances | undefined, standing: Standing): string {
  if (missing) return `Pin\u00a0${pin}, no pin here`;
  return told ? pinChanceWords(told, standing) : `Pin\u00a0${pin}`;
}

/** A chance as a bar; the figure stands beside it. */
export function ChanceBar({ chance }: { readonly chance: number }) {
  return (
    <svg className="chance-bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
      <rect className="chance-all" width="100" height="6" />
      <rect className="chance-part" width={100 * chance} height="6" />
    </svg>
  );
}
