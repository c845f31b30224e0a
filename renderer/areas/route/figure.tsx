import { ReadLine } from '../../look/read-line';
import { readAmount } from '../../words/figure-words';

const MOST_AMPS = 100;

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
      read={(typed) => readAmount(typed, most, unit)}
      onDone={(next) => onDone(next ?? undefined)}
    />
  );
}
