import { memo, type PointerEvent } from 'react';
import type { Pin } from '../../../../boards/document/connector';
import { contradictionWords, pinWords, SURENESS_WORDS } from '../../../../boards/document/pin-words';
import { contradictions, surenessOf } from '../../../../boards/document/sureness';
import { signalOf } from '../../../../boards/signals/signals';
import { DisputeSign } from './dispute-sign';
import { SurenessSign } from './sureness-sign';

interface HeaderCellProps {
  readonly pin: Pin;
  readonly chosen: boolean;
  /** The one cell that Tab comes to. */
  readonly stop: boolean;
  readonly onPress: (label: string, event: PointerEvent) => void;
  readonly onDragOver: (label: string) => void;
}

/** A pin as a square: number, print or name, signal, how sure, and whether sources disagree. */
export const HeaderCell = memo(function HeaderCell({
  pin,
  chosen,
  stop,
  onPress,
  onDragOver,
}: HeaderCellProps) {
  const sureness = surenessOf(pin);
  const disputed = contradictions(pin).length > 0;
  const called = pin.print || pin.name;
  return (
    <td
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a cell that is walked to and chosen
      role="gridcell"
      className="header-cell"
      data-pin={pin.pin}
      data-missing={pin.missing}
      data-unsure={sureness === 'unknown' || sureness === 'guessed' || undefined}
      aria-selected={chosen}
      tabIndex={stop ? 0 : -1}
      onPointerDown={(event) => onPress(pin.pin, event)}
      onPointerEnter={(event) => {
        if ((event.buttons & 1) === 1) onDragOver(pin.pin);
      }}
    >
      <span className="aside-hidden">{cellWords(pin)}</span>
      <span className="header-cell-drawn" aria-hidden="true">
        <span className="header-cell-top">
          <span className="mono">{pin.pin}</span>
          {disputed && <DisputeSign />}
          <SurenessSign sureness={sureness} />
        </span>
        {called !== undefined && called !== '' && <span className="header-cell-name">{called}</span>}
        <span className="header-cell-signal">{signalText(pin)}</span>
      </span>
    </td>
  );
});

function signalText({ missing, signal, channel }: Pin): string {
  if (missing) return 'no pin';
  const { name } = signalOf(signal ?? 'unknown');
  return channel === undefined ? name : `${name} ${channel}`;
}

/** "Pin 3, power switch, printed PWR, a guess, disagreement: manual says ground". */
function cellWords(pin: Pin): string {
  const otherwise = contradictionWords(pin);
  return [
    `Pin\u00a0${pin.pin}`,
    pinWords(pin),
    SURENESS_WORDS[surenessOf(pin)],
    otherwise === '' ? '' : `sources disagree: ${otherwise}`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}
