import { describe, expect, it } from 'vitest';
import type { Turn } from '../../../boards/base/units';
import type { Seat } from '../../../boards/document/build';
import type { Connector } from '../../../boards/document/connector';
import type { Lead } from '../../../boards/document/lead';
import { jointsOf } from '../../../boards/fit/joints';
import { matchOf } from '../../../boards/fit/match';
import { makeConnector } from '../../../boards/library/make-connector';
import { bench, grid, lead, partLead, posts, seat } from '../fixtures/bench';

const PAIR = grid(1, 2);
const ROW_OF_FOUR = grid(1, 4);
const place = { xMm: 0, yMm: 0, turn: 0 } as const;
const panel = makeConnector('panel-2x5', { id: 'jfp', print: 'JFP', place });
const usb = makeConnector('usb2-2x5', { id: 'jusb', print: 'JUSB', place });

/** The panel lies with its even pins above: 2 4 6 8 10 over 1 3 5 7 9. */
const EVEN = 0;
const ODD = 1;

function verdict(connector: Connector, plug: Lead, at: Seat['at'], turn: Turn = 0) {
  const build = bench([connector], [plug], [seat(plug.id, connector.id, at, turn)]);
  return matchOf(jointsOf(build)).map((match) => match.verdict);
}

const powerSwitch = partLead('sw', 'power-switch', PAIR, { a: '1', b: '2' });
const driveLed = partLead('led', 'drive-led', PAIR, { anode: '1', cathode: '2' });
const usbRow = partLead('usb', 'usb2-port', ROW_OF_FOUR, {
  vbus: '1',
  'd-minus': '2',
  'd-plus': '3',
  ground: '4',
});

describe('leads of the panel', () => {
  it('a switch is right either way round', () => {
    expect(verdict(panel, powerSwitch, [EVEN, 2])).toEqual(['right']);
    expect(verdict(panel, powerSwitch, [EVEN, 3], 180)).toEqual(['right']);
  });

  it('a switch is right across pins 5 and 6: the ground of the reset pair is a ground', () => {
    expect(verdict(panel, powerSwitch, [EVEN, 2], 90)).toEqual(['right']);
  });

  it('a power switch is wrong on the reset pins', () => {
    expect(verdict(panel, powerSwitch, [ODD, 2])).toEqual(['wrong']);
  });

  it('an LED turned by half is reversed', () => {
    expect(verdict(panel, driveLed, [ODD, 0])).toEqual(['right']);
    expect(verdict(panel, driveLed, [ODD, 1], 180)).toEqual(['reversed']);
  });

  it('a drive LED is wrong on the power LED pins', () => {
    expect(verdict(panel, driveLed, [EVEN, 0])).toEqual(['wrong']);
  });

  it('an electronic switch is reversed where a plain one would be right', () => {
    const electronic = partLead('sw', 'electronic-power-switch', PAIR, { a: '1', b: '2' });
    expect(verdict(panel, electronic, [EVEN, 3], 180)).toEqual(['reversed']);
  });

  it('one leg over the missing pin is wrong', () => {
    expect(verdict(panel, powerSwitch, [EVEN, 3])).toEqual(['wrong']);
  });

  it('a pin of unknown meaning leaves it open, unless another contact is wrong already', () => {
    const sketch = posts('jfp', grid(1, 4), {
      pins: ['power-switch-input', 'unknown', 'unknown', 'supply-5v'],
    });
    expect(verdict(sketch, powerSwitch, [0, 0])).toEqual(['unknown']);
    expect(verdict(sketch, powerSwitch, [0, 2])).toEqual(['wrong']);
  });

  it('one half of a flying pair is judged alone', () => {
    const anode = partLead('led', 'drive-led', grid(1, 1), { anode: '1' });
    expect(verdict(panel, anode, [ODD, 0])).toEqual(['right']);
    expect(verdict(panel, anode, [ODD, 1])).toEqual(['wrong']);
  });

  it('a cable without a part has nothing to match', () => {
    expect(verdict(panel, lead('cable', PAIR, { contacts: ['1', '2'] }), [EVEN, 2])).toEqual([]);
  });

  it('a jumper cap is right on the pins of its own job only', () => {
    const cap = partLead('cap', 'jumper-cap', PAIR, { a: '1', b: '2' });
    const jumper = posts('jclr', grid(1, 3), { pins: ['clear-settings', 'clear-settings', 'ground'] });
    expect(verdict(jumper, cap, [0, 0])).toEqual(['right']);
    expect(verdict(panel, cap, [EVEN, 2])).toEqual(['wrong']);
  });

  it('a jumper cap is wrong from the clear pin to ground, whichever end the ground is at', () => {
    // Clear-settings jumper, cap on 1-2 to keep and on 2-3 to clear: common practice, no source.
    const cap = partLead('cap', 'jumper-cap', PAIR, { a: '1', b: '2' });
    const clear = makeConnector('clear-settings-1x3', { id: 'jclr', print: 'JCLR', place });
    expect(verdict(clear, cap, [0, 0])).toEqual(['right']);
    expect(verdict(clear, cap, [0, 1])).toEqual(['wrong']);
    expect(verdict(clear, cap, [0, 2], 180)).toEqual(['wrong']);
  });
});

describe('USB leads', () => {
  it('one port’s row is right on either row of the header', () => {
    expect(verdict(usb, usbRow, [ODD, 0])).toEqual(['right']);
    expect(verdict(usb, usbRow, [EVEN, 0])).toEqual(['right']);
  });

  it('turned by half it is reversed: +5 V and ground have changed places', () => {
    expect(verdict(usb, usbRow, [ODD, 3], 180)).toEqual(['reversed']);
  });

  it('one column on it is wrong', () => {
    expect(verdict(usb, usbRow, [EVEN, 1])).toEqual(['wrong']);
  });

  it('contacts on two ports are mixed, though every signal is right', () => {
    const crossed = grid(2, 2, { numbering: { scheme: 'by-row', from: 'top-left' } });
    const data = partLead('usb', 'usb2-port', crossed, { vbus: '1', 'd-minus': '4' });
    expect(verdict(usb, data, [EVEN, 0])).toEqual(['ports-mixed']);
  });

  it('grounds of the other port do not count as mixed', () => {
    const crossed = grid(2, 4);
    const data = partLead('usb', 'usb2-port', crossed, { vbus: '1', 'd-minus': '2', ground: '8' });
    expect(verdict(usb, data, [EVEN, 0])).toEqual(['right']);
  });

  it('a shield may meet nothing, or a pin wired to nothing, and must not meet +5 V', () => {
    const shielded = partLead('usb', 'usb2-port', grid(1, 5), {
      vbus: '1',
      'd-minus': '2',
      'd-plus': '3',
      ground: '4',
      shield: '5',
    });
    expect(verdict(usb, shielded, [ODD, 0])).toEqual(['right']);
    expect(verdict(usb, shielded, [EVEN, 0])).toEqual(['right']);
    const onlyShield = partLead('usb', 'usb2-port', grid(1, 1), { shield: '1' });
    expect(verdict(usb, onlyShield, [ODD, 0])).toEqual(['wrong']);
  });
});
