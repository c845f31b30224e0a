import { describe, expect, it } from 'vitest';
import { gridIndex } from '../../../../boards/document/numbering';
import { parseDocument } from '../../../../boards/document/parse';
import { serialize } from '../../../../boards/document/serialize';
import { done } from '../../edit/carried-out';
import { entered } from './entered';
import { KNOWN_LAYOUTS, type Layout, pinOfLayout } from './known-layouts';
import { STRANGE_LAYOUTS } from './strange-layouts';

const LAYOUTS = [...KNOWN_LAYOUTS, ...STRANGE_LAYOUTS].map((layout) => [layout.name, layout] as const);

/** Every pin of the layout in counting order, as it should stand in the sheet. */
function asMeant(layout: Layout) {
  const order = new Map(gridIndex(layout.grid).positions.map(({ label }, at) => [label, at]));
  return layout.pins
    .map((pin) => pinOfLayout(layout, pin))
    .toSorted((a, b) => (order.get(a.pin) ?? 0) - (order.get(b.pin) ?? 0));
}

describe('a header set down pin by pin', () => {
  it.each(LAYOUTS)('%s has every pin where it is, what it is and who says so', (_, layout) => {
    const [header] = entered(layout).board.connectors;
    expect(header?.grid).toEqual(layout.grid);
    expect(header?.pins).toEqual(asMeant(layout));
  });

  it.each(LAYOUTS)('%s is the same after it was stored and loaded', (_, layout) => {
    const build = entered(layout);
    const text = serialize(build);
    const opened = parseDocument(text);
    expect(opened).toEqual({ ok: true, value: build });
    if (opened.ok) expect(serialize(opened.value)).toBe(text);
  });

  it.each(LAYOUTS)('%s is the same when it is filled in a second time from the same source', (_, layout) => {
    const build = entered(layout);
    const pins = layout.pins.map((pin) => pinOfLayout(layout, pin));
    expect(done(build, { name: 'fill-pins', args: { connector: 'header', pins } })).toBe(build);
  });
});
