import { describe, expect, it } from 'vitest';
import type { Build, Seat } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import type { Lead } from '../../../boards/document/lead';
import type { Unit } from '../../../boards/document/unit';
import { labelOf } from '../../../boards/edit/apply';
import type { Command } from '../../../boards/edit/command';
import { fitSeat } from '../../../boards/fit/fit-seat';
import { placesOf } from '../../../boards/fit/places';
import { makeConnector } from '../../../boards/library/make-connector';
import { makeLead } from '../../../boards/library/make-lead';
import { bench } from '../findings/harness';
import { done, toldNo } from './carried-out';

const at = { xMm: 0, yMm: 0, turn: 0 } as const;

function outlet(id: string): Connector {
  const cpu = makeConnector('cpu-power-2x4', { id, print: id.toUpperCase(), place: at });
  return { ...cpu, family: 'supply-side' };
}

const supply: Unit = { id: 'psu', name: 'Supply', kind: 'supply', connectors: [outlet('cpu-out')] };
const cable: Lead = makeLead('cpu-power-cable-8', { id: 'cpu-cable', name: 'CPU cable' });
const near: Seat = { lead: 'cpu-cable', plug: 'supply', connector: 'cpu-out', at: [0, 0], turn: 0 };
const far: Seat = { lead: 'cpu-cable', plug: 'board', connector: 'cpu', at: [0, 0], turn: 0 };
const onBoard: Build = bench().header('cpu-power-2x4', 'cpu').build;
const add: Command = { name: 'add-unit', args: { unit: supply, leads: [cable], seats: [near] } };

describe('a unit of a build', () => {
  const added = done(onBoard, add);

  it('comes with its cables and where they sit, in one step', () => {
    expect(added.units).toEqual([supply]);
    expect(added.extras).toEqual([cable]);
    expect(added.seats).toEqual([near]);
  });

  it('is refused when an id is taken, by name', () => {
    expect(toldNo(added, add)).toBe('There is a unit “psu” already. Choose another id.');
    const other: Command = { name: 'add-unit', args: { unit: { ...supply, id: 'psu-2' } } };
    expect(toldNo(added, other)).toBe('There is a connector “cpu-out” already. Choose another id.');
  });

  it('is refused when a cable that comes with it does not fit where it is said to sit', () => {
    const args = { unit: supply, leads: [cable], seats: [{ ...near, plug: 'board' }] };
    expect(toldNo(onBoard, { name: 'add-unit', args })).toMatch(
      /does not fit there on cpu-out\. A plug of the shape “cpu power” does not enter “supply side”/,
    );
  });

  it('takes a plug on its connector and lets it go with the unit, cables staying on the shelf', () => {
    const fed = done(added, { name: 'seat-plug', args: far });
    expect(fed.seats).toEqual([near, far]);
    const removed = done(fed, { name: 'remove-unit', args: { unit: 'psu' } });
    expect(removed.seats).toEqual([far]);
    expect(removed.extras).toEqual([cable]);
    expect(removed).not.toHaveProperty('units');
  });

  it('is named and placed; a place that the tray has not is refused', () => {
    const named = done(added, { name: 'rename-unit', args: { unit: 'psu', name: 'Old supply' } });
    expect(named.units?.[0]?.name).toBe('Old supply');
    expect(toldNo(added, { name: 'place-unit', args: { unit: 'psu', at: 'bay-9' } })).toBe(
      'No unit can sit at “bay-9”. Choose a point, a bay or the supply of the tray, a place for drives on the board, or none.',
    );
    expect(toldNo(added, { name: 'rename-unit', args: { unit: 'disk', name: 'x' } })).toBe(
      'There is no unit “disk” in this build.',
    );
  });

  it('sits at a place for drives on the board, where the board has one', () => {
    const slot = { id: 'slot', name: 'Slot' };
    const placed = done(
      added,
      { name: 'list-drive-places', args: { places: [slot] } },
      { name: 'place-unit', args: { unit: 'psu', at: 'slot' } },
    );
    expect(placed.units?.[0]?.at).toBe('slot');
    expect(toldNo(added, { name: 'list-drive-places', args: { places: [slot, slot] } })).toBe(
      'There is a place “slot” already. Choose another id.',
    );
  });

  it('has the figures of what it is, and no others', () => {
    const drive = { lineRateGbps: 6 } as const;
    const hub = { fedBy: 'header', amps: 1 } as const;
    const rate = (unit: string, figures: object): Command => ({
      name: 'rate-unit',
      args: { unit, drive: null, hub: null, ...figures },
    });
    const disk: Unit = { id: 'disk', name: 'Disk', kind: 'drive', connectors: [] };
    const both = done(added, { name: 'add-unit', args: { unit: disk } }, rate('disk', { drive }));
    expect(both.units?.[1]).toEqual({ ...disk, drive });
    expect(done(both, rate('disk', {})).units?.[1]).toEqual(disk);
    expect(toldNo(both, rate('psu', { drive }))).toBe(
      'Supply is no drive, and only a drive has a line rate and a current at the start.',
    );
    expect(toldNo(both, rate('disk', { hub }))).toBe(
      'Disk is no hub, and only a hub shares out what feeds it.',
    );
  });

  it('is told in the undo list when someone chooses where it goes', () => {
    const choose = (kind: 'port' | 'header', of: string, on: string | null): Command => ({
      name: 'choose-place',
      args: { kind, of, on },
    });
    expect(labelOf(added, choose('port', 'psu', 'cpu'))).toBe('Choose where Supply goes');
    expect(labelOf(added, choose('header', 'cpu-cable', null))).toBe('Leave open where CPU cable goes');
  });

  it('takes with it what was chosen for it and its outlets, so that the next of its id has a free choice', () => {
    const choose = (kind: 'port' | 'header' | 'branch', of: string, on: string): Command => ({
      name: 'choose-place',
      args: { kind, of, on },
    });
    const disk: Command = {
      name: 'add-unit',
      args: { unit: { id: 'disk', name: 'Disk', kind: 'drive', connectors: [] } },
    };
    const chosen = done(
      done(added, disk),
      choose('port', 'disk', 'cpu'),
      choose('branch', 'disk', 'cpu-cable'),
      choose('header', 'disk', 'cpu'),
      choose('header', 'fan', 'cpu-out'),
    );
    const again = done(chosen, { name: 'remove-unit', args: { unit: 'disk' } }, disk);
    // A fan that happens to have the same id is another thing.
    expect(again.choices).toEqual([
      { kind: 'header', of: 'disk', on: 'cpu' },
      { kind: 'header', of: 'fan', on: 'cpu-out' },
    ]);
    const without = done(again, { name: 'remove-unit', args: { unit: 'psu' } });
    expect(without.choices).toEqual([{ kind: 'header', of: 'disk', on: 'cpu' }]);
  });

  it('loses with one of its outlets what was chosen to go there', () => {
    const chosen: Build = {
      ...added,
      choices: [
        { kind: 'header', of: 'fan', on: 'cpu-out' },
        { kind: 'header', of: 'other-fan', on: 'cpu' },
      ],
    };
    const without = done(chosen, { name: 'remove-connector', args: { connector: 'cpu-out' } });
    expect(without.units).toEqual([{ ...supply, connectors: [] }]);
    expect(without.choices).toEqual([{ kind: 'header', of: 'other-fan', on: 'cpu' }]);
  });

  it('has its connectors documented by the same commands as those of the board', () => {
    const pin = { pin: '1', signal: 'supply-12v' } as const;
    const changed = done(added, { name: 'change-pin', args: { connector: 'cpu-out', pin } });
    expect(changed.units?.[0]?.connectors[0]?.pins).toContainEqual(pin);
    expect(changed.board).toBe(added.board);
    const more = done(added, {
      name: 'add-connector',
      args: { unit: 'psu', connector: outlet('cpu-out-2') },
    });
    expect(more.units?.[0]?.connectors.map(({ id }) => id)).toEqual(['cpu-out', 'cpu-out-2']);
    const fewer = done(more, { name: 'remove-connector', args: { connector: 'cpu-out' } });
    expect(fewer.units?.[0]?.connectors.map(({ id }) => id)).toEqual(['cpu-out-2']);
    expect(fewer.seats).toEqual([]);
  });
});

describe('plugs on units', () => {
  it('find their places on the board first, then on every unit that their shape fits', () => {
    const added = done(onBoard, add);
    expect(placesOf(added, { lead: 'cpu-cable', plug: 'supply' }).map(({ connector }) => connector)).toEqual([
      'cpu-out',
    ]);
    expect(placesOf(added, { lead: 'cpu-cable', plug: 'board' }).map(({ connector }) => connector)).toEqual([
      'cpu',
    ]);
  });

  it('are in nobody’s way on the board, though both count their millimetres from 0', () => {
    const fan = makeConnector('fan-1x4', { id: 'out', print: '1', place: at });
    const hub: Unit = { id: 'hub', name: 'Hub', kind: 'hub', connectors: [fan] };
    const board = bench()
      .connector({ ...fan, id: 'header' })
      .lead('fan-1x4', 'front')
      .lead('fan-1x4', 'rear')
      .with({ units: [hub] })
      .seat('front', 'header', '1').build;
    const rear: Seat = { lead: 'rear', plug: 'plug', connector: 'out', at: [0, 0], turn: 0 };
    expect(fitSeat(board, rear).refusals).toEqual([]);
    expect(fitSeat(board, { ...rear, connector: 'header' }).refusals).toMatchObject([{ code: 'occupied' }]);
    const renamed: Build = { ...board, board: { ...board.board, name: 'Renamed' } };
    expect(fitSeat(renamed, { ...rear, connector: 'header' }).refusals).toMatchObject([{ code: 'occupied' }]);
  });
});
