import { listed } from '../../../../boards/base/listed';
import type { Pin } from '../../../../boards/document/connector';
import { MeaningFields, SourceFields } from './pin-fields';

/** How many labels are still told one by one. */
const FEW = 8;

interface PinsFormProps {
  readonly pins: readonly Pin[];
  readonly onChange: (change: (pin: Pin) => Pin) => void;
}

/** Several pins at once: what is set here is set on each of them, in one step. */
export function PinsForm({ pins, onChange }: PinsFormProps) {
  const labels = pins.map(({ pin }) => pin);
  const shown = labels.slice(0, FEW);
  const more = labels.length - shown.length;
  return (
    <section className="pin-form" aria-label={`${pins.length} pins`}>
      <h3>{pins.length} pins</h3>
      <p className="soft small">
        Pins {listed(more > 0 ? [...shown, `${more} more`] : shown)}. What you set here is set on all of them.
      </p>
      <MeaningFields pins={pins} onChange={onChange} />
      <SourceFields pins={pins} onChange={onChange} />
    </section>
  );
}
