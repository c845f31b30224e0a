import { describe, expect, it } from 'vitest';
import { readPinList } from '../../../../boards/pinout/pin-list/pin-list';
import { KNOWN_LAYOUTS, type Layout, portAt } from './known-layouts';
import { MANNERS } from './manners';
import { STRANGE_LAYOUTS } from './strange-layouts';

const LAYOUTS = [...KNOWN_LAYOUTS, ...STRANGE_LAYOUTS];

/** "3 usb-d-minus@A": every pin as the layout has it, and as the list was read. */
function asMeant({ pins }: Layout): readonly string[] {
  return pins.map(([label, is]) => `${label} ${is}`);
}

function asRead(layout: Layout, text: string): readonly string[] {
  const result = readPinList(text, { grid: layout.grid });
  if (!result.ok) return [JSON.stringify(result.problem)];
  return layout.pins.map(([label, is]) => {
    const pin = result.value.pins.find((each) => each.label === label);
    const port = portAt(is).channel === undefined ? '' : `@${pin?.channel ?? ''}`;
    return `${label} ${pin?.missing ? 'no pin' : `${pin?.signal ?? 'not understood'}${port}`}`;
  });
}

it('There are the eleven headers that most boards have, and thirty that a stranger may try', () => {
  expect(KNOWN_LAYOUTS).toHaveLength(11);
  expect(STRANGE_LAYOUTS.length).toBeGreaterThanOrEqual(30);
});

describe.each(MANNERS.map((manner) => [manner.name, manner] as const))('written with %s', (_, manner) => {
  it.each(LAYOUTS.map((layout) => [layout.name, layout] as const))(
    '%s is read as it is meant',
    (__, layout) => {
      expect(asRead(layout, manner.write(layout.pins))).toEqual(asMeant(layout));
    },
  );
});
