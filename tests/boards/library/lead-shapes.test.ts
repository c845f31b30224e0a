import { describe, expect, it } from 'vitest';
import type { Lead, Plug } from '../../../boards/document/lead';
import { holeState } from '../../../boards/document/lookup';
import { gridIndex } from '../../../boards/document/numbering';
import { makeLead } from '../../../boards/library/make-lead';

const MARKS = { contact: 'c', empty: 'o', blocked: 'x' } as const;

/** A plug seen from above, wires towards you: c a contact, o an empty hole, x a blocked one. */
function drawn(lead: Lead, plug: Plug): string {
  const { labelAt } = gridIndex(plug.grid);
  return Array.from({ length: plug.grid.rows }, (_, row) =>
    Array.from({ length: plug.grid.cols }, (__, col) => {
      const hole = labelAt([row, col]);
      return hole === undefined ? ' ' : MARKS[holeState(lead, plug, hole)];
    }).join(''),
  ).join(' / ');
}

function shapesOf(leadType: string): readonly string[] {
  const lead = makeLead(leadType, { id: 'lead', name: 'Lead' });
  return lead.plugs.map((plug) => drawn(lead, plug));
}

// The kinds of plugs that cases, fans and supplies bring, as builders' notes, manuals and how-tos list them.
describe('the plugs that machines bring', () => {
  it.each<[what: string, leadType: string, shapes: readonly string[]]>([
    ['a two-way switch', 'power-switch-1x2', ['cc']],
    ['a two-way switch', 'reset-switch-1x2', ['cc']],
    ['a switch behind a circuit, which has a direction', 'electronic-power-switch-1x2', ['cc']],
    ['a two-way LED', 'drive-led-1x2', ['cc']],
    ['a two-way LED', 'power-led-1x2', ['cc']],
    ['a two-way LED', 'message-led-1x2', ['cc']],
    ['an LED of two colours', 'two-colour-power-led-1x2', ['cc']],
    ['a power LED three wide with an empty middle', 'power-led-1x3', ['coc']],
    ['an LED on two flying singles', 'power-led-singles', ['c', 'c']],
    ['a speaker four wide, the outer two in use', 'speaker-1x4', ['cooc']],
    ['a small buzzer, four wide', 'buzzer-1x4', ['cooc']],
    ['a small buzzer, two wide', 'buzzer-1x2', ['cc']],
    ['a power LED with a key lock', 'power-led-key-lock-1x5', ['coccc']],
    ['a drive LED four wide with two in use', 'drive-led-1x4', ['ccoo']],
    ['a panel block, hole 10 blocked', 'panel-block-2x5', ['ccccx / cccco']],
    ['a maker’s own fine block', 'maker-block-2x9-fine', ['oocccoxoc / cccoooooo']],
    ['a USB block, hole 9 blocked, hole 10 empty', 'usb2-block-2x5', ['cccco / ccccx']],
    ['a USB block with a shield wire on 10', 'usb2-block-2x5-shield', ['ccccc / ccccx']],
    ['a USB port in one row', 'usb2-row-1x4', ['cccc']],
    ['a USB port in one row of five', 'usb2-row-1x5', ['ccccc']],
    ['a USB port in singles', 'usb2-singles', ['c', 'c', 'c', 'c']],
    ['two USB ports in singles', 'usb2-singles-two-ports', ['c', 'c', 'c', 'c', 'c', 'c', 'c', 'c']],
    ['a USB 3 block, position 20 closed, hole 10 empty', 'usb3-block', ['xccccccccc / ccccccccco']],
    ['a Type-C plug', 'usb-c-front', ['cccccccccc / cccccccccc']],
    ['an HD audio block, hole 8 blocked', 'hd-audio-block-2x5', ['cccxc / ccccc']],
    ['an AC’97 block, hole 8 blocked, hole 7 empty', 'ac97-audio-block-2x5', ['cccxc / cccoc']],
    ['audio in singles', 'audio-singles', ['c', 'c', 'c', 'c', 'c', 'c', 'c']],
    ['audio in singles, outputs bridged', 'audio-singles-bridged', ['c', 'c', 'c', 'cc', 'cc']],
    ['a 1394 block, hole 9 blocked', 'ieee1394-block-2x5', ['ccccc / ccccx']],
    ['a serial ribbon, hole 10 blocked', 'serial-block-2x5', ['ccccx / ccccc']],
    ['a case-open switch', 'case-open-1x2', ['cc']],
    ['a case-open switch three wide', 'case-open-1x3', ['cco']],
    ['a jumper cap', 'jumper-cap-1x2', ['cc']],
    ['a fan without a speed wire', 'fan-1x2', ['cc']],
    ['a fan with a speed wire', 'fan-1x3', ['ccc']],
    ['a fan with a control wire', 'fan-1x4', ['cccc']],
    ['a fan on a drive plug, passed through', 'fan-on-drive-plug', ['cccc', 'cccc']],
    [
      'main power, 24 ways with 20 empty',
      'main-power-cable-24',
      ['cccccccccccc / cccccccocccc', 'cccccccccccc / cccccccocccc'],
    ],
    ['main power, 20 ways', 'main-power-cable-20', ['cccccccccc / cccccccccc', 'cccccccccc / cccccccccc']],
    [
      'main power, 20 and 4',
      'main-power-cable-20-and-4',
      ['cccccccccccc / cccccccocccc', 'cccccccccc / cccccccocc', 'cc / cc'],
    ],
    ['CPU power, 4 ways', 'cpu-power-cable-4', ['cc / cc', 'cc / cc']],
    ['CPU power, 4 and 4', 'cpu-power-cable-4-and-4', ['cccc / cccc', 'cc / cc', 'cc / cc']],
    ['CPU power, 8 ways', 'cpu-power-cable-8', ['cccc / cccc', 'cccc / cccc']],
    ['card power, 6 ways', 'card-power-cable-6', ['ccc / ccc', 'ccc / ccc']],
    ['card power, 8 ways', 'card-power-cable-8', ['cccc / cccc', 'cccc / cccc']],
    ['card power, 6 and 2', 'card-power-cable-6-and-2', ['cccc / cccc', 'ccc / ccc', 'c / c']],
    ['SATA power from a drive plug, no +3.3 V, 11 open', 'sata-power-adapter', ['cccc', 'ooocccccccocccc']],
    ['SATA data', 'sata-data-cable', ['ccccccc', 'ccccccc']],
    ['a four-way drive plug', 'peripheral-power-cable', ['cccc', 'cccc']],
    [
      'an adapter: one fan header for two fans, one of them with a speed wire',
      'fan-splitter',
      ['cccc', 'cccc', 'ccoc'],
    ],
    [
      'an adapter: the panel header brought elsewhere',
      'panel-extension-2x5',
      ['ccccx / ccccc', 'ccccx / ccccc'],
    ],
  ])('%s (%s)', (_what, leadType, shapes) => {
    expect(shapesOf(leadType)).toEqual(shapes);
  });
});

describe('wire colours', () => {
  const coloursOf = (leadType: string, owner: string) =>
    Object.fromEntries(
      makeLead(leadType, { id: 'lead', name: 'Lead' })
        .wires.filter(({ from }) => from.startsWith(`${owner}.`))
        .map(({ from, colour }) => [from.slice(owner.length + 1), colour]),
    );

  // Front Panel I/O Connectivity Design Guide v1.3 (2005), 4.4.2, Figure 14 (read in source).
  it.each([
    ['usb2-block-2x5', 'first'],
    ['usb2-block-2x5', 'second'],
    ['usb2-row-1x4', 'port'],
    ['usb2-singles', 'first'],
  ])('a USB 2.0 cable is red, white, green, black: %s %s', (leadType, part) => {
    expect(coloursOf(leadType, part)).toEqual({
      vbus: 'red',
      'd-minus': 'white',
      'd-plus': 'green',
      ground: 'black',
    });
  });

  // 4-Wire PWM Controlled Fans Specification rev 1.3 (2005), Table 1, as quoted by owners.
  it('a four-wire fan is black, yellow, green, blue', () => {
    expect(coloursOf('fan-1x4', 'fan')).toEqual({
      ground: 'black',
      supply: 'yellow',
      tach: 'green',
      pwm: 'blue',
    });
  });

  // Three-wire order from memory: black, red, yellow.
  it('a three-wire fan is black, red, yellow', () => {
    expect(coloursOf('fan-1x3', 'fan')).toEqual({ ground: 'black', supply: 'red', tach: 'yellow' });
  });

  // A table in a weblog (read in secondary); pins of the microATX specification v1.2, Figure 8.
  it('a main power cable has the colours of its rails', () => {
    const {
      8: ok,
      9: standby,
      14: minus,
      16: on,
      20: open,
      ...rails
    } = coloursOf('main-power-cable-24', 'supply');
    expect({ ok, standby, minus, on, open }).toEqual({
      ok: 'grey',
      standby: 'violet',
      minus: 'blue',
      on: 'green',
      open: undefined,
    });
    const pinsOf = (colour: string) => Object.keys(rails).filter((pin) => rails[pin] === colour);
    expect(pinsOf('orange')).toEqual(['1', '2', '12', '13']);
    expect(pinsOf('red')).toEqual(['4', '6', '21', '22', '23']);
    expect(pinsOf('yellow')).toEqual(['10', '11']);
    expect(pinsOf('black')).toEqual(['3', '5', '7', '15', '17', '18', '19', '24']);
  });

  // ATX 3.0 power supply design guide (336521), Tables 5-4 and 5-8: yellow +12 V, black ground.
  it('a card’s six wires are yellow in one row and black in the other, a CPU’s four the reverse', () => {
    expect(Object.values(coloursOf('card-power-cable-6', 'supply'))).toEqual([
      'yellow',
      'yellow',
      'yellow',
      'black',
      'black',
      'black',
    ]);
    expect(Object.values(coloursOf('cpu-power-cable-4', 'supply'))).toEqual([
      'black',
      'black',
      'yellow',
      'yellow',
    ]);
  });
});
