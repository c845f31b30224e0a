import { ok, type Result, refuse } from '../../../boards/base/result';
import { ReadLine } from '../../look/read-line';

const MOST_AMPS = 100;

/** A number above nothing, or nothing where it is not known. */
function readFigure(most: number, unit: string) {
  return (typed: string): Result<number | null, string> => {
    if (typed.trim() === '') return ok(null);
    const value = Number(typed.trim().replace(',', '.'));
    if (value > 0 && value <= most) return ok(value);
    return refuse(`Type ${unit}, more than 0 and at most ${most}, or nothing.`);
  };
}

interface FigureProps {
  readonly label: string;
  readonly value: number | undefined;
  readonly onDone: (value: number | undefined) => void;
  readonly most?: number;
  readonly unit?: string;
}

/** One figure of a manual or a label, amps unless it says otherwise. */
export function Figure({ label, value, onDone, most = MOST_AMPS, unit = 'amps' }: FigureProps) {
  return (
    <ReadLine<number | null>
      label={label}
      shown={value === undefined ? '' : String(value)}
      placeholder="not read"
      read={readFigure(most, unit)}
      onDone={(next) => onDone(next ?? undefined)}
    />
  );
}
