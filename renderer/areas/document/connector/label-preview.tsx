import type { Connector } from '../../../../boards/document/connector';
import { pinOf } from '../../../../boards/document/lookup';
import { pinWords } from '../../../../boards/document/pin-words';
import type { HeaderLayout } from './header-layout';

interface LabelPreviewProps {
  readonly connector: Connector;
  readonly layout: HeaderLayout;
}

/** A header with the numbers it would have, and what would be known of each. */
export function LabelPreview({ connector, layout }: LabelPreviewProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls
    <section className="label-preview" aria-label="The numbers it would have" tabIndex={0}>
      <table>
        <tbody>
          {layout.spots.map((row) => (
            <tr key={row[0]?.join(' ')}>
              {row.map((spot) => {
                const label = layout.labelAt(spot);
                if (label === null)
                  return <td key={spot.join(' ')} className="label-none" aria-label="no position" />;
                const pin = pinOf(connector, label);
                const known = pin.missing || pin.signal !== undefined;
                return (
                  <td key={label} className={pin.missing ? 'label-cell label-missing' : 'label-cell'}>
                    <span className="mono">{label}</span>
                    {known && <span className="label-signal soft">{pinWords(pin)}</span>}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
