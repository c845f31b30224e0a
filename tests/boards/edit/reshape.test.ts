import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Connector } from '../../../boards/document/connector';
import { rowPitchOf } from '../../../boards/document/grid';
import { gridIndex } from '../../../boards/document/numbering';
import { applyCommand, labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { arbitraryConnector } from '../arbitrary-build';
import { bench, grid, partLead, posts, seat } from '../fixtures/bench';
import { done, toldNo } from './carried-out';

// How a header is edited: common practice, no source.

const NBSP = '\u00a0';
type Shape = Extract<Command, { name: 'reshape-connector' }>['args']['shape'];

function shapeOf({ grid: { rows, cols, pitchMm, rowPitchMm }, family, shroud }: Connector): Shape {
  return { rows, cols, pitchMm, rowPitchMm: rowPitchMm ?? null, family, shroud: shroud ?? null };
}

function reshape(connector: Connector, over: Partial<Shape>, anyway = false): Command {
  const args = { connector: connector.id, shape: { ...shapeOf(connector), ...over } };
  return { name: 'reshape-connector', args: anyway ? { ...args, anyway: true } : args };
}

const power = partLead('power-sw', 'power-switch', grid(1, 2), { a: '1', b: '2' });
const panel = posts('panel', grid(2, 5, { numbering: { scheme: 'zig-zag', from: 'bottom-left' } }), {
  pins: ['drive-led-feed', 'power-led-feed', 'drive-led-sink', 'power-led-sink', 'ground'],
});
const seated = bench([panel], [power], [seat('power-sw', 'panel', [1, 3])]);

function first(build: typeof seated): Connector {
  const [connector] = build.board.connectors;
  if (connector === undefined) throw new Error('No connector');
  return connector;
}

describe('a connector in another shape', () => {
  it('keeps what is known of the pins whose labels survive, and the plugs that still fit', () => {
    const command = reshape(panel, { cols: 9 });
    const changed = done(seated, command);
    expect(first(changed).grid).toMatchObject({ rows: 2, cols: 9 });
    expect(first(changed).pins).toEqual(panel.pins);
    expect(changed.seats).toEqual(seated.seats);
    expect(labelOf(seated, command)).toBe('Reshape PANEL');
  });

  it('is refused with the pins and plugs that it would cost, and done anyway as one step', () => {
    expect(toldNo(seated, reshape(panel, { cols: 2 }))).toBe(
      `PANEL would lose what is known of pin${NBSP}5. POWER-SW would no longer fit on PANEL and come off.`,
    );
    expect(toldNo(seated, reshape(panel, { pitchMm: 1.27 }))).toBe(
      'POWER-SW would no longer fit on PANEL and come off.',
    );
    const anyway = done(seated, reshape(panel, { cols: 2 }, true));
    expect(first(anyway).pins).toEqual(panel.pins.slice(0, 4));
    expect(anyway.seats).toEqual([]);
  });

  it('takes its plugs and photo points along with their numbers where counting begins on the right', () => {
    const counted = grid(2, 5, { numbering: { scheme: 'zig-zag', from: 'top-right' } });
    const right = posts('panel', counted, { pins: ['power-led-feed', null, 'power-led-sink'] });
    // The last two columns of the upper row: pins 3 and 1.
    const bare = bench([right], [power], [seat('power-sw', 'panel', [0, 3])]);
    const photo = { id: 'near', title: 'near', type: 'image/png', data: 'AAAA', widthPx: 80, heightPx: 60 };
    const point = { connector: 'panel', pin: '1', xPx: 9, yPx: 9 };
    const build = {
      ...bare,
      board: { ...bare.board, photos: [{ ...photo, points: [point] }] },
    } as typeof bare;
    const wider = done(build, reshape(right, { cols: 6 }));
    expect(first(wider).pins).toEqual(right.pins);
    expect(wider.seats).toEqual([seat('power-sw', 'panel', [0, 4])]);
    expect(wider.board.photos?.[0]?.points).toEqual([point]);
    expect(done(wider, reshape(right, {}))).toEqual(build);
  });

  it('is refused where the pins under a plug would come apart, and the plug comes off', () => {
    const rows = posts('panel', grid(2, 5));
    // Row by row, pins 6 and 7 stand in the lower row of five columns, and in two rows of six.
    const build = bench([rows], [power], [seat('power-sw', 'panel', [1, 0])]);
    expect(toldNo(build, reshape(rows, { cols: 6 }))).toBe(
      'POWER-SW would no longer fit on PANEL and come off.',
    );
    expect(done(build, reshape(rows, { cols: 6 }, true)).seats).toEqual([]);
    const further = bench([rows], [power], [seat('power-sw', 'panel', [1, 1])]);
    expect(done(further, reshape(rows, { cols: 6 })).seats).toEqual([seat('power-sw', 'panel', [1, 0])]);
  });

  it('may be of another family, with walls and a slot, or open again', () => {
    const shroud = { walls: ['top', 'bottom'], guide: 'bottom' } satisfies Connector['shroud'];
    const walled = done(bench([panel], []), reshape(panel, { family: 'usb3', shroud, rowPitchMm: 2 }));
    expect(first(walled)).toMatchObject({ family: 'usb3', shroud });
    expect(rowPitchOf(first(walled).grid)).toBe(2);
    expect(done(walled, reshape(panel, {}))).toEqual(bench([panel], []));
  });

  it('calls new positions among free labels by the lowest numbers that are free', () => {
    const labels = [['A', '2', null]];
    const odd = posts('odd', grid(1, 3, { numbering: { scheme: 'free', labels } }));
    const changed = first(done(bench([odd], []), reshape(odd, { rows: 2 })));
    expect(changed.grid.numbering).toEqual({ scheme: 'free', labels: [...labels, ['1', '3', '4']] });
  });

  it('is as before when it is made larger and small again', () => {
    fc.assert(
      fc.property(arbitraryConnector('odd'), fc.nat(4), fc.nat(4), (connector, rows, cols) => {
        const build = bench([connector], []);
        const { grid: own } = connector;
        const larger = reshape(connector, { rows: own.rows + rows, cols: own.cols + cols });
        const back = applyCommand(done(build, larger), reshape(connector, {}));
        expect(back.ok && back.value).toEqual(build);
      }),
      { seed: 43, numRuns: 300 },
    );
  });

  it('loses exactly the pins that it names', () => {
    fc.assert(
      fc.property(arbitraryConnector('odd'), (connector) => {
        const build = bench([connector], []);
        const smaller = { rows: 1, cols: Math.max(1, connector.grid.cols - 1) };
        const asked = applyCommand(build, reshape(connector, smaller));
        const lost = !asked.ok && asked.problem.code === 'reshape-loses' ? asked.problem.pins : [];
        const result = applyCommand(build, reshape(connector, smaller, true));
        if (!result.ok) {
          // A grid of free labels may be left without any position.
          expect(connector.grid.numbering.scheme).toBe('free');
          return;
        }
        const kept = first(result.value);
        const known = connector.pins.filter((pin) => Object.keys(pin).length > 1).map(({ pin }) => pin);
        expect(
          [...kept.pins.map(({ pin }) => pin), ...lost].filter((pin) => known.includes(pin)).sort(),
        ).toEqual([...known].sort());
        for (const { pin } of kept.pins) expect(gridIndex(kept.grid).cellOf(pin)).toBeDefined();
      }),
      { seed: 44, numRuns: 300 },
    );
  });

  it('has 1 to 64 rows and columns at a pitch above 0 and up to 50 mm', () => {
    expect(toldNo(seated, reshape(panel, { cols: 65 }))).toBe(
      '“shape.cols” cannot be kept: it has to be a whole number from 1 to 64, and is 65.',
    );
    expect(toldNo(seated, reshape(panel, { rows: 0 }))).toMatch(/a whole number from 1 to 64, and is 0/);
    expect(toldNo(seated, reshape(panel, { pitchMm: 0 }))).toMatch(/above 0, at most 50/);
  });
});
