import { LINE_RATES_GBPS, type LineRateGbps } from '../../../../boards/document/rating';
import { Choice } from '../../../look/choice';

/** What stands for a figure that nobody read. */
export const UNREAD = { id: 'unread', label: 'not read' } as const;

const RATES = LINE_RATES_GBPS.map((rate) => ({ id: String(rate), label: `${rate}\u00a0Gb/s` }));

interface LineRateChoiceProps {
  readonly rate: LineRateGbps | undefined;
  readonly onChoose: (rate: LineRateGbps | undefined) => void;
}

/** Which line rate a port or a drive has. */
export function LineRateChoice({ rate, onChoose }: LineRateChoiceProps) {
  return (
    <Choice
      label="Line rate"
      options={[UNREAD, ...RATES]}
      chosen={rate === undefined ? UNREAD.id : String(rate)}
      onChoose={(id) => onChoose(LINE_RATES_GBPS.find((each) => String(each) === id))}
    />
  );
}
