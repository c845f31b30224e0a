import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../boards/document/build';
import { asLaid } from '../../../../boards/routing/laid/as-laid';
import { layingOrder } from '../../../../boards/routing/laid/order-of-laying';
import { layingReasonWords, STAGE_WORDS } from '../../../../boards/routing/laid/order-words';
import { bench } from '../../fixtures/bench';
import { laidMachine, MACHINE_TRAY } from './laid-machine';

const NBSP = '\u00a0';

function order(build: Build): Readonly<Record<string, readonly string[]>> {
  const stages = layingOrder(build) ?? [];
  return Object.fromEntries(stages.map(({ stage, turns }) => [stage, turns.map(({ run }) => run.lead.id)]));
}

function reasonOf(build: Build, lead: string): string {
  const turns = (layingOrder(build) ?? []).flatMap((stage) => stage.turns);
  const found = turns.find(({ run }) => run.lead.id === lead);
  if (found === undefined) throw new Error(`${lead} has no turn`);
  return layingReasonWords(build, found.reason);
}

const machine = laidMachine();

describe('the order of laying', () => {
  it('has every run once that has a way, and no other', () => {
    expect(asLaid(machine)?.runs.every(({ state }) => state.kind === 'laid')).toBe(true);
    const turns = (layingOrder(machine) ?? []).flatMap((stage) => stage.turns);
    expect(turns.map(({ run }) => run.id).toSorted()).toEqual(
      asLaid(machine)
        ?.runs.map(({ id }) => id)
        .toSorted(),
    );
    const { routes: _, ...open } = machine;
    expect(layingOrder(open)).toEqual([]);
    expect(layingOrder(bench([], []))).toBeUndefined();
  });

  it('begins with what no hand can lead through once the board is in', () => {
    expect(reasonOf(machine, 'cpu')).toBe(
      `Above the board lies in a strip of 40${NBSP}mm beside the board, too narrow for a hand. Lead it through now, and plug it in later.`,
    );
    const roomy = { ...MACHINE_TRAY, board: { xMm: 20, yMm: 90, rear: 'left' as const } };
    const lower = laidMachine({ case: { ...machine.case, tray: roomy } });
    expect(reasonOf(lower, 'cpu')).toContain('common practice');
  });

  it('puts first what the board covers', () => {
    const front = (id: string, from: string, to: string) => ({
      id,
      from,
      to,
      lengthMm: 100,
      side: 'front' as const,
    });
    const tray = {
      ...MACHINE_TRAY,
      points: [
        ...MACHINE_TRAY.points,
        { id: 'under', name: 'Tie under it', kind: 'tie' as const, xMm: 100, yMm: 100 },
        { id: 'out', kind: 'tie' as const, xMm: 230, yMm: 190 },
      ],
      paths: [
        ...MACHINE_TRAY.paths,
        front('below-under', 'below', 'under'),
        front('under-out', 'under', 'out'),
      ],
    };
    const paths = ['panel-column', 'column-below', 'below-under', 'under-out'];
    const routes = [{ lead: 'fan-low', plug: 'plug', paths }];
    const build = laidMachine({ case: { ...machine.case, tray }, routes });
    expect(reasonOf(build, 'fan-low')).toBe('The board covers Tie under it.');
  });

  it('puts first what the board covers in part, and says so', () => {
    // It reaches 310 mm down, and the opening below it from 300 to 320.
    const outline = { ...machine.board.outline, depthMm: 270 };
    const build = laidMachine({ board: { ...machine.board, outline } });
    expect(order(build)['before-board']).toContain('fan-low');
    expect(reasonOf(build, 'fan-low')).toBe('The board covers part of Below the board.');
  });

  it('lays before a graphics card what the card hides', () => {
    const card = { id: 'card', name: 'Graphics card', kind: 'card' as const, at: 'card-end', connectors: [] };
    const build = laidMachine({ units: [card] });
    expect(order(build)['before-card']).toEqual(['fan-low']);
    expect(reasonOf(build, 'fan-low')).toBe('Graphics card hides FAN_LOW.');
    expect(order(machine)['before-card']).toBeUndefined();
  });

  it('lays before the side panel what goes behind the tray', () => {
    expect(order(machine)['before-panel']).toEqual(['main', 'data', 'button', 'fan-low']);
    expect(reasonOf(machine, 'main')).toBe('It lies behind the tray.');
  });
});

describe('rules of thumb of laying cables (common practice, no source)', () => {
  it('feeds the supply of the processor and fan leads at the top edge before the board is in the way', () => {
    expect(order(machine)['before-board']).toEqual(['cpu', 'fan-top']);
    expect(reasonOf(machine, 'fan-top')).toBe(
      `FAN_TOP is at the edge of the board along a strip of 40${NBSP}mm. Lead its end there now.`,
    );
  });

  it('goes on with the supply of the board, then drives, then panel and ports, and ends with fans', () => {
    const all = Object.values(order(machine)).flat();
    expect(all.indexOf('cpu')).toBeLessThan(all.indexOf('main'));
    expect(all.indexOf('main')).toBeLessThan(all.indexOf('data'));
    expect(all.indexOf('data')).toBeLessThan(all.indexOf('button'));
    expect(all.indexOf('button')).toBeLessThan(all.indexOf('fan-low'));
  });

  it('lays stiff cables before thin ones of the same use', () => {
    const stiff = machine.case.leads.map((lead) =>
      lead.id === 'fan-low' && lead.cable ? { ...lead, cable: { ...lead.cable, bendRadiusMm: 9 } } : lead,
    );
    const routes = (machine.routes ?? []).map((route) =>
      route.lead === 'fan-top' ? { ...route, paths: ['panel-column', 'column-beside'] } : route,
    );
    const seats = machine.seats.map((seat) =>
      seat.lead === 'fan-top' ? { ...seat, connector: 'panel', at: [1, 0] as [number, number] } : seat,
    );
    const same = (leads: typeof stiff) =>
      order(laidMachine({ case: { ...machine.case, leads }, routes, seats }))['before-panel'] ?? [];
    expect(same(stiff).slice(-2)).toEqual(['fan-low', 'fan-top']);
    const other = machine.case.leads.map((lead) =>
      lead.id === 'fan-top' && lead.cable ? { ...lead, cable: { ...lead.cable, diameterMm: 4 } } : lead,
    );
    expect(same(other).slice(-2)).toEqual(['fan-top', 'fan-low']);
  });

  it('names its stages by the moment after which a cable is hard to lay', () => {
    expect(Object.values(STAGE_WORDS)).toEqual([
      'Before the board goes in',
      'Before the graphics card',
      'Before the side panel behind the tray',
      'Last, on the front',
    ]);
  });
});
