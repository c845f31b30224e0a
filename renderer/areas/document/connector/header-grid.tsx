import { type ClipboardEvent, type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import { pinOf } from '../../../../boards/document/lookup';
import { afterKey } from './grid-keys';
import { HeaderCell } from './header-cell';
import { HeaderFrame } from './header-frame';
import type { HeaderLayout } from './header-layout';
import { extendedTo, only, type PinSelection, toggled } from './selection';

interface HeaderGridProps {
  readonly connector: Connector;
  readonly layout: HeaderLayout;
  readonly selection: PinSelection;
  readonly onSelect: (selection: PinSelection) => void;
  /** A key that is not about choosing; true when it was for the pins. */
  readonly onKey: (event: KeyboardEvent) => boolean;
  readonly onCopy: (clipboard: DataTransfer, cut: boolean) => void;
  readonly onPaste: (text: string) => void;
}

/** A connector as it lies on the board, one square a pin: arrows walk it as drawn, Shift and Ctrl choose several. */
export function HeaderGrid(props: HeaderGridProps) {
  const { connector, layout, selection, onSelect, onKey, onCopy, onPaste } = props;
  const grid = useRef<HTMLTableElement>(null);
  // The cells are drawn again only when they change, so what they call has to stay the same.
  const latest = useRef(props);
  useEffect(() => {
    latest.current = props;
  });
  const cells = useRef({
    press: (label: string, event: PointerEvent) => {
      if (event.button !== 0) return;
      const now = latest.current;
      if (event.shiftKey) now.onSelect(extendedTo(now.layout, now.selection, label));
      else now.onSelect(event.ctrlKey || event.metaKey ? toggled(now.selection, label) : only(label));
    },
    dragOver: (label: string) => {
      const now = latest.current;
      now.onSelect(extendedTo(now.layout, now.selection, label));
    },
  }).current;

  const select = (next: PinSelection) => {
    onSelect(next);
    grid.current?.querySelector<HTMLElement>(`[data-pin="${CSS.escape(next.focus)}"]`)?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const { key, shiftKey, ctrlKey, metaKey } = event;
    const next = afterKey(layout, selection, { key, shiftKey, mod: ctrlKey || metaKey });
    if (next) select(next);
    if (next || onKey(event)) {
      event.preventDefault();
      event.stopPropagation();
    }
  };
  const copy = (event: ClipboardEvent, cut: boolean) => {
    event.preventDefault();
    onCopy(event.clipboardData, cut);
  };
  return (
    <div className="header-scroll">
      <HeaderFrame connector={connector} layout={layout}>
        <table
          ref={grid}
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table whose cells are walked and chosen
          role="grid"
          className="header-grid"
          aria-label={`Header ${connector.print || connector.title}, as it lies`}
          aria-multiselectable
          data-wide={layout.cols > 12 ? true : undefined}
          data-own-keys="Delete Mod+D"
          onKeyDown={onKeyDown}
          onCopy={(event) => copy(event, false)}
          onCut={(event) => copy(event, true)}
          onPaste={(event) => {
            event.preventDefault();
            onPaste(event.clipboardData.getData('text/plain'));
          }}
        >
          <tbody>
            {layout.spots.map((row) => (
              <tr key={row[0]?.join(' ')}>
                {row.map((spot) => {
                  const label = layout.labelAt(spot);
                  if (label === null)
                    return <td key={spot.join(' ')} className="header-gap" aria-label="no position" />;
                  return (
                    <HeaderCell
                      key={label}
                      pin={pinOf(connector, label)}
                      chosen={selection.chosen.has(label)}
                      stop={label === selection.focus}
                      onPress={cells.press}
                      onDragOver={cells.dragOver}
                    />
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </HeaderFrame>
    </div>
  );
}
