import { type KeyboardEvent, useRef, useState } from 'react';
import type { Connector } from '../../../../boards/document/connector';
import { pinOf } from '../../../../boards/document/lookup';
import { useBuild, useWorkbench } from '../../../workbench';
import { HeaderGrid } from './header-grid';
import { layoutOf } from './header-layout';
import { lyingWords } from './lying-words';
import { changeChosen, clearChosen, copyChosen, fillChosen, pasteOn } from './pin-doings';
import { PinForm } from './pin-form';
import { PinTable } from './pin-table';
import { PinToolbar } from './pin-toolbar';
import { PinsForm } from './pins-form';
import { inOrder, only, type PinSelection, settled } from './selection';

interface HeaderEditorProps {
  readonly connector: Connector;
  readonly pin: string | undefined;
}

/** The pins of a header as they lie, one by one in a table, and the fields of those that are chosen. */
export function HeaderEditor({ connector, pin }: HeaderEditorProps) {
  const workbench = useWorkbench();
  const { view } = useBuild();
  const editor = useRef<HTMLDivElement>(null);
  const [last, setLast] = useState<PinSelection | null>(null);
  const layout = layoutOf(connector, view);
  const selection = settled(layout, last, pin);
  const chosen = { connector, layout, selection };
  const select = (next: PinSelection) => {
    setLast(next);
    workbench.session.getState().select({ kind: 'connector', connector: connector.id, pin: next.focus });
  };
  const onKey = (event: KeyboardEvent) => {
    const mod = event.ctrlKey || event.metaKey;
    if (event.key === 'Enter' || event.key === 'F2') {
      if (selection.chosen.size === 0) select(only(selection.focus));
      // The fields of a pin that was not chosen before are there after the next drawing.
      requestAnimationFrame(() =>
        editor.current?.querySelector<HTMLElement>('.pin-form input[role="combobox"]')?.focus(),
      );
      return true;
    }
    if (mod && event.key.toLowerCase() === 'd') fillChosen(workbench, chosen);
    else if (event.key === 'Delete' || event.key === 'Backspace') clearChosen(workbench, chosen);
    else return false;
    return true;
  };
  const toGrid = (event: KeyboardEvent) => {
    if (event.key !== 'F2') return;
    event.preventDefault();
    editor.current?.querySelector<HTMLElement>('.header-grid [tabindex="0"]')?.focus();
  };
  const pins = inOrder(layout, selection).map((label) => pinOf(connector, label));
  const [one] = pins;
  return (
    <div
      className="header-editor"
      ref={editor}
      data-tall={layout.rows > 4 && layout.cols < 4 ? true : undefined}
    >
      <p className="lying soft small">{lyingWords(connector.place.turn, view)}</p>
      <HeaderGrid
        connector={connector}
        layout={layout}
        selection={selection}
        onSelect={select}
        onKey={onKey}
        onCopy={(clipboard, cut) => {
          const text = copyChosen(workbench, chosen);
          if (text === undefined) return;
          clipboard.setData('text/plain', text);
          if (cut) clearChosen(workbench, chosen);
        }}
        onPaste={(text) => pasteOn(workbench, chosen, text)}
      />
      <PinToolbar chosen={chosen} />
      <p className="soft small">
        Arrows walk the pins, Shift and Ctrl choose several, Ctrl+A all. Enter goes to their fields, F2 back.
      </p>
      <div className="pins">
        <PinTable connector={connector} selection={selection} onSelect={select} />
        <div className="pin-side" onKeyDownCapture={toGrid}>
          {one === undefined && <p className="soft pin-form">Choose a pin to change what is known of it.</p>}
          {one && pins.length === 1 && <PinForm key={one.pin} connector={connector.id} pin={one} />}
          {pins.length > 1 && (
            <PinsForm
              key={pins.map((each) => each.pin).join(' ')}
              pins={pins}
              onChange={(change) => changeChosen(workbench, chosen, change)}
            />
          )}
        </div>
      </div>
    </div>
  );
}
