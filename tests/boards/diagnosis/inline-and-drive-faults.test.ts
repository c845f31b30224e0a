import { describe, expect, it } from 'vitest';
import { makeConnector } from '../../../boards/library/make-connector';
import { demo } from '../findings/demo';
import { bench } from '../findings/harness';
import { casesOf, chanceOfSeeing, endsOf, faultOf, unlistedOf } from './faults-by-name';

describe('a board between panel and header', () => {
  const whole = bench()
    .header('panel-2x5', 'panel')
    .lead('panel-extension-2x5', 'block')
    .seat('block', 'panel', '1', { plug: 'board' }).build;

  it('may pull each input that a wire of it reaches, and open each light', () => {
    expect(casesOf(whole, 'board-between').map(({ name }) => name)).toEqual([
      'BLOCK pulls power low on pin 6 of PANEL.',
      'BLOCK pulls reset low on pin 7 of PANEL.',
    ]);
    expect(endsOf(faultOf(whole, 'block/board/pulls-reset'))).toContain('held-in-reset');
    expect(endsOf(faultOf(whole, 'block/board/pulls-power'))).toContain('forced-off');
    const dark = faultOf(whole, 'block/board/opens-drive-led');
    expect(chanceOfSeeing(dark, 'drive-light-dark')).toBeGreaterThan(0.5);
    expect(chanceOfSeeing(dark, 'power-light-dark')).toBeLessThan(0.1);
  });

  it('never holds reset where it has no wire to reset', () => {
    const leads = whole.case.leads.map((lead) => ({
      ...lead,
      wires: lead.wires.filter(({ from }) => from !== 'board.7'),
    }));
    const build = { ...whole, case: { ...whole.case, leads } };
    const own = casesOf(build, 'board-between');
    expect(own.map(({ id }) => id)).toEqual(['block/board/pulls-power']);
    for (const fault of own) expect(endsOf(fault)).not.toContain('held-in-reset');
  });

  it('is called by the thing that its cable leads to', () => {
    const place = { xMm: 10, yMm: 10, turn: 0 } as const;
    const remote = {
      id: 'remote',
      name: 'Remote board',
      kind: 'other' as const,
      connectors: [makeConnector('panel-2x5', { id: 'remote-panel', print: 'OUT', place })],
    };
    const build = {
      ...whole,
      units: [remote],
      seats: [
        ...whole.seats,
        {
          lead: 'block',
          plug: 'far',
          connector: 'remote-panel',
          at: [0, 0] as [number, number],
          turn: 0 as const,
        },
      ],
    };
    expect(faultOf(build, 'block/board/pulls-power').name).toBe(
      'Remote board by BLOCK pulls power low on pin 6 of PANEL.',
    );
  });

  it('is a switch behind a circuit too, which alone may be the wrong way round', () => {
    const build = bench()
      .header('panel-2x5', 'panel')
      .lead('electronic-power-switch-1x2', 'touch')
      .seat('touch', 'panel', '6').build;
    expect(casesOf(build, 'electronic-switch').map(({ name }) => name)).toEqual([
      'The electronic switch of TOUCH is the wrong way round.',
    ]);
    expect(casesOf(build, 'board-between').map(({ id }) => id)).toEqual(['touch/plug/pulls-power']);
  });

  it('is the one of any machine where a build has plain switches and lights alone', () => {
    for (const id of ['board-between', 'led-loop', 'electronic-switch'])
      expect(unlistedOf(demo('wired'), id)).toBe(1);
  });
});

describe('drives that a build has', () => {
  const build = demo('every-cable');

  it('have data cables that are worn, or not in at either end, by name', () => {
    const own = casesOf(build, 'data-cable');
    expect(own.map(({ name }) => name)).toContain('Data of Drive A is worn or badly seated.');
    expect(own.map(({ name }) => name)).toContain('Data of Drive B is not in at DATA of Drive B.');
    const off = faultOf(build, 'data-2/drive/off/');
    expect(off.off).toEqual({ lead: 'data-2', plug: 'drive' });
    expect(chanceOfSeeing(off, 'drive-missing')).toBeGreaterThan(0.9);
    expect(chanceOfSeeing(off, 'transfer-errors')).toBeLessThan(0.05);
  });

  it('have sockets for power, and an adapter that may burn only where there is one', () => {
    expect(casesOf(build, 'drive-socket').map(({ name }) => name)).toEqual([
      'The supply socket of Drive A is broken.',
      'The supply socket of Drive B is broken.',
    ]);
    expect(casesOf(build, 'adapter-burnt')).toEqual([]);
    const adapted = bench()
      .unit('supply-modular-ash', 'own')
      .unit('drive', 'disk')
      .unit('sata-adapter', 'step')
      .seat('own-drive', 'own-drives-1', '1', { plug: 'supply' })
      .seat('own-drive', 'step-in', '1', { plug: 'drive' })
      .seat('step-tail', 'disk-power', '1', { plug: 'drive' }).build;
    expect(casesOf(adapted, 'adapter-burnt').map(({ lead }) => lead)).toEqual(['step-tail']);
    // The drive hangs on all three plugs of its way: each of them off leaves it without power.
    expect(
      casesOf(adapted, 'drive-plug-off')
        .map(({ id }) => id)
        .toSorted(),
    ).toEqual(['own-drive/drive/off/', 'own-drive/supply/off/', 'step-tail/drive/off/']);
  });
});
