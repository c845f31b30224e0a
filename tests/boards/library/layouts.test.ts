import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../boards/document/connector';
import type { Grid } from '../../../boards/document/grid';
import { pinOf } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import { connectorType } from '../../../boards/library/connector-type';
import { FAMILY } from '../../../boards/library/families';
import { singleRow, thereAndBack, zigZag } from '../../../boards/library/grids';
import { keyAt, pinsFrom } from '../../../boards/library/pin-rows';
import { readAbout } from '../../../boards/library/reading';
import type { SignalId } from '../../../boards/signals/signals';
import { LAYOUTS, type Layout, MEANINGS } from './layouts';
import { anywhere } from './published';
import { savedAndOpened } from './saved';

const READING = readAbout('manual', 'manuals and build notes of real machines');
const row = pinsFrom(READING);

/** Pin numbers and what a person would write beside them. */
function spotsOf(line: string): readonly (readonly [pin: number, is: string])[] {
  return line.split(', ').map((spot) => {
    const [pin = '', ...is] = spot.split(' ');
    return [Number(pin), is.join(' ')];
  });
}

function meaningOf(words: string): SignalId {
  const signal = MEANINGS[words];
  if (signal === undefined) throw new Error(`No signal for “${words}”`);
  return signal;
}

function gridOf({ count, rows, pitchMm }: Layout): Grid {
  const cols = spotsOf(rows[0] ?? '').length;
  switch (count) {
    case 'along':
      return singleRow(cols, pitchMm);
    case 'odd and even':
      return zigZag(cols, pitchMm);
    case 'there and back':
      return thereAndBack(cols, pitchMm);
  }
}

/** The layout as a connector, with the functions that the library itself is made with. */
function built(layout: Layout): Connector {
  const { connector } = connectorType('as-shown', {
    title: layout.what,
    family: FAMILY.pinHeader,
    grid: gridOf(layout),
    pins: layout.rows
      .flatMap(spotsOf)
      .map(([pin, is]) => (is === 'no pin' ? keyAt(pin, READING) : row(pin, meaningOf(is), is))),
  });
  return { ...connector, id: 'as-shown', print: 'J1', place: { xMm: 20, yMm: 20, turn: 0 } };
}

/** Back from the connector to rows of pins as the layout gives them, the row of pin 1 first. */
function shownBy(connector: Connector): readonly string[] {
  const { labelAt, cellOf } = gridIndex(connector.grid);
  const rows = Array.from({ length: connector.grid.rows }, (_, r) =>
    Array.from({ length: connector.grid.cols }, (__, c) => {
      const pin = pinOf(connector, labelAt([r, c]) ?? '');
      return `${pin.pin} ${pin.missing ? 'no pin' : pin.name}`;
    }).join(', '),
  );
  return cellOf('1')?.[0] === 0 ? rows : rows.reverse();
}

describe('headers of real machines', () => {
  it.each(LAYOUTS)('$what keeps every pin in its place, saved and opened again', (layout) => {
    const opened = savedAndOpened(built(layout));
    expect(opened).toEqual(built(layout));
    expect(shownBy(opened)).toEqual(layout.rows);
  });

  it.each(LAYOUTS)('$what is $sameAs of the library', (layout) => {
    const mean = (connector: Connector) => ({
      grid: connector.grid,
      pins: connector.pins.map(({ pin, signal, missing }) => [pin, missing ? 'no pin' : signal]),
    });
    expect(mean(built(layout))).toEqual(mean(anywhere(layout.sameAs)));
  });
});
