import type { Mm } from '../../../../boards/base/units';
import { LengthLine } from '../../../look/length-line';
import { TRAY_PLACE_BOUNDS, TRAY_SIZE_BOUNDS } from '../../../words/tray-words';

interface PlaceFieldsProps {
  readonly at: { readonly xMm: Mm; readonly yMm: Mm };
  /** What is measured there: "Middle", "Left edge". */
  readonly what?: string;
  readonly onChange: (changed: { readonly xMm?: Mm; readonly yMm?: Mm }) => void;
}

/** Where something is on the tray, seen from the front. */
export function PlaceFields({ at, what = 'Middle', onChange }: PlaceFieldsProps) {
  return (
    <div className="route-pair">
      <LengthLine
        label={`${what} from the left, mm`}
        value={at.xMm}
        bounds={TRAY_PLACE_BOUNDS}
        onDone={(xMm) => xMm !== undefined && onChange({ xMm })}
      />
      <LengthLine
        label={`${what} from the top, mm`}
        value={at.yMm}
        bounds={TRAY_PLACE_BOUNDS}
        onDone={(yMm) => yMm !== undefined && onChange({ yMm })}
      />
    </div>
  );
}

interface SizeFieldsProps {
  readonly size: { readonly widthMm: Mm; readonly heightMm: Mm };
  readonly onChange: (changed: { readonly widthMm?: Mm; readonly heightMm?: Mm }) => void;
}

/** How large something is. */
export function SizeFields({ size, onChange }: SizeFieldsProps) {
  return (
    <div className="route-pair">
      <LengthLine
        label="Width, mm"
        value={size.widthMm}
        bounds={TRAY_SIZE_BOUNDS}
        onDone={(widthMm) => widthMm !== undefined && onChange({ widthMm })}
      />
      <LengthLine
        label="Height, mm"
        value={size.heightMm}
        bounds={TRAY_SIZE_BOUNDS}
        onDone={(heightMm) => heightMm !== undefined && onChange({ heightMm })}
      />
    </div>
  );
}
