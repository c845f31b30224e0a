import { describe, expect, test } from 'vitest';
import { applyCommand } from '../../../../boards/edit/apply';
import { Bench, bench } from '../harness';

describe('an LED plug with a gap between its contacts', () => {
  // Power LED plugs three wide with an empty middle hole: common practice, no source.
  const board = bench().header('panel-2x5', 'panel').lead('power-led-1x3', 'led');

  test('two neighbouring pins and no three-wide header: move the contact, take it apart, or an adapter', () => {
    expect(board.finding('plug-too-wide')).toMatchObject({
      severity: 'fault',
      leads: ['led'],
      pins: [
        { connector: 'panel', pin: '2' },
        { connector: 'panel', pin: '4' },
      ],
      data: { plug: { lead: 'led', plug: 'plug' }, connector: 'panel', part: 'led' },
      remedies: [
        { command: { name: 'move-contact', args: { lead: 'led', plug: 'plug', from: '3', to: '2' } } },
        { command: { name: 'split-plug', args: { lead: 'led', plug: 'plug' } } },
        {},
      ],
    });
  });

  test('with the contact moved it fits', () => {
    const [remedy] = board.finding('plug-too-wide').remedies;
    const moved = remedy?.command && applyCommand(board.build, remedy.command);
    expect(moved?.ok && new Bench(moved.value).codes()).not.toContain('plug-too-wide');
  });

  test('a free three-wide header is its place', () => {
    // Auxiliary power LED header: two board technical product specifications.
    const build = board.header('power-led-1x3', 'aux');
    expect(build.codes()).toContain('lead-left-over');
    expect(build.codes()).not.toContain('plug-too-wide');
    expect(build.seat('led', 'aux', '1').codes()).not.toContain('plug-too-wide');
  });
});
