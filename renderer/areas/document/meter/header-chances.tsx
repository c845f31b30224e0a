import { type KeyboardEvent, useRef, useState } from 'react';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import type { Connector } from '../../../../boards/document/connector';
import { pinOf } from '../../../../boards/document/lookup';
import type { Identification } from '../../../../boards/pinout/meter/identification';
import { doCommand } from '../../../do-command';
import { useBuild, useWorkbench } from '../../../workbench';
import { HeaderFrame } from '../connector/header-frame';
import { layoutOf } from '../connector/header-layout';
import { lyingWords } from '../connector/lying-words';
import { pinMissing } from '../connector/pin-with';
import { type Direction, stepFrom } from '../connector/selection';
import { ChanceCell } from './chance-cell';
import { standingOf } from './standing';

interface HeaderChancesProps {
  readonly connector: Connector;
  readonly found: Identification | null;
  readonly pin: string | null;
  readonly onPin: (pin: string) => void;
}

const ARROWS: Readonly<Record<string, Direction>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
};

/** The header as it lies, every pin with its most probable signal; places without a post are marked here. */
export function HeaderChances({ connector, found, pin, onPin }: HeaderChancesProps) {
  const workbench = useWorkbench();
  const { view } = useBuild();
  const [marking, setMarking] = useState(false);
  const grid = useRef<HTMLTableElement>(null);
  const layout = layoutOf(connector, view);
  const stop = pin !== null && layout.labels.includes(pin) ? pin : layout.labels[0];
  const missing = connector.pins.filter((each) => each.missing).length;
  const press = (label: string) => {
    onPin(label);
    if (!marking) return;
    const now = pinOf(connector, label);
    doCommand(workbench, {
      name: 'change-pin',
      args: { connector: connector.id, pin: pinMissing(now, now.missing !== true) },
    });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const direction = ARROWS[event.key];
    if (stop === undefined) return;
    if (direction) {
      const next = stepFrom(layout, stop, direction);
      onPin(next);
      grid.current?.querySelector<HTMLElement>(`[data-pin="${CSS.escape(next)}"]`)?.focus();
    } else if (event.key === ' ' || event.key === 'Enter') press(stop);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <section className="meter-header" aria-label="The header">
      <div className="form-head">
        <p className="soft small">{lyingWords(connector.place.turn, view)}</p>
        <ToggleButton className="button meter-marking" isSelected={marking} onChange={setMarking}>
          Mark missing posts
        </ToggleButton>
      </div>
      <p className="small" role="status">
        {missingWords(marking, missing)}
      </p>
      <div className="header-scroll">
        <HeaderFrame connector={connector} layout={layout}>
          <table
            ref={grid}
            // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells are walked and chosen
            role="grid"
            className="header-grid"
            aria-label={`Header ${connector.print || connector.title}, what its pins most probably are`}
            onKeyDown={onKeyDown}
          >
            <tbody>
              {layout.spots.map((row) => (
                <tr key={row[0]?.join(' ')}>
                  {row.map((spot) => {
                    const label = layout.labelAt(spot);
                    if (label === null)
                      return <td key={spot.join(' ')} className="header-gap" aria-label="no position" />;
                    const told = found?.pins.find((each) => each.pin === label);
                    return (
                      <ChanceCell
                        key={label}
                        pin={label}
                        missing={pinOf(connector, label).missing === true}
                        told={told}
                        standing={found && told ? standingOf(told, found.layouts) : 'open'}
                        chosen={label === pin}
                        stop={label === stop}
                        onPress={() => press(label)}
                      />
                    );
                  })}
                </tr>
              ))}
            </tbody>
          </table>
        </HeaderFrame>
      </div>
    </section>
  );
}

function missingWords(marking: boolean, missing: number): string {
  if (marking) return 'Press every place where no post stands, or walk there by the arrows and press Space.';
  if (missing > 0) return missing === 1 ? 'One place has no post.' : `${missing} places have no post.`;
  return 'Which posts are missing? Mark them first: a gap tells much, and costs no reading.';
}
