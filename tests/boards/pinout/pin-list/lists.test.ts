import { describe, expect, it } from 'vitest';
import type { Grid } from '../../../../boards/document/grid';
import { labelled, singleRow, zigZag } from '../../../../boards/library/grids';
import { listProblemWords, listRefusalWords } from '../../../../boards/pinout/pin-list/list-words';
import { PIN_LIST_LIMITS, readPinList } from '../../../../boards/pinout/pin-list/pin-list';
import { plain } from '../../../e2e/reading';

// Ways in which manuals and pages lay lists out: common practice, no source.

function reading(text: string, grid: Grid, title = '') {
  const result = readPinList(text, { grid, title });
  if (!result.ok) throw new Error(listRefusalWords(result.problem).title);
  return result.value;
}

/** "1 drive-led-feed, 2 no pin": what every pin was read as. */
function read(text: string, grid: Grid, title = ''): string {
  return reading(text, grid, title)
    .pins.map(({ label, missing, signal }) => `${label} ${missing ? 'no pin' : (signal ?? '?')}`)
    .join(', ');
}

/** The same without the labels. */
function signals(text: string, grid: Grid): readonly string[] {
  return reading(text, grid).pins.map(({ missing, signal }) => (missing ? 'no pin' : (signal ?? '?')));
}

function problems(text: string, grid: Grid): readonly string[] {
  return reading(text, grid).problems.map((problem) => plain(listProblemWords(problem).title));
}

function refused(text: string, grid: Grid = zigZag(5)): string {
  const result = readPinList(text, { grid });
  if (result.ok) throw new Error('It was read');
  const { title, advice } = listRefusalWords(result.problem);
  return plain(`${title}. ${advice}`);
}

describe('a list', () => {
  it('may name ranges and groups of pins, before the word or behind it', () => {
    const grounds = '1 ground, 2 ground, 3 ground, 4 ground';
    for (const text of [
      '1-4 GND',
      'pins 1 to 4: GND',
      '1, 2, 3 and 4 = GND',
      'GND: 1, 2, 3, 4',
      'GND (pins 1-4)',
      '1-2, 3/4 GND',
      '1..4 GND',
    ])
      expect(read(text, singleRow(4)), text).toBe(grounds);
  });

  it('does not take a voltage for a label', () => {
    expect(read('1 - 5V\n2 -12V\n3 - 3.3 V\n4: +12V', singleRow(4))).toBe(
      '1 supply-5v, 2 supply-minus-12v, 3 supply-3v3, 4 supply-12v',
    );
    expect(read('1 - 5 Volts\n2 - 12 volt\n3 to 4 NC', singleRow(4))).toBe(
      '1 supply-5v, 2 supply-12v, 3 no-connection, 4 no-connection',
    );
  });

  it('does not take the number of pins in its heading for a label', () => {
    const list = '1 VCC\n3 D-\n5 D+\n7 GND';
    const usb = '1 usb-vbus, 3 usb-d-minus, 5 usb-d-plus, 7 ground';
    for (const heading of [
      '9 pin USB header',
      '9-pin USB header:',
      '10 pins, front panel',
      '2 way connector',
    ])
      expect(read(`${heading}\n${list}`, zigZag(5)), heading).toBe(usb);
    expect(read(`${list}\n9 pin removed`, zigZag(5))).toBe(`${usb}, 9 no pin`);
    expect(read('1 + header LED\n9 pin', zigZag(5))).toMatch(/^1 .*, 9 /);
  });

  it('may put each pin between commas or semicolons in one line', () => {
    expect(read('Fan: 1 GND, 2 +12V, 3 TACH, 4 PWM', singleRow(4))).toBe(
      '1 ground, 2 fan-supply, 3 fan-tach, 4 fan-pwm',
    );
    expect(read('GND; +12V; TACH; PWM', singleRow(4))).toBe('1 ground, 2 fan-supply, 3 fan-tach, 4 fan-pwm');
  });

  it('may have labels with letters, in any case', () => {
    const grid = labelled(['A1 A2', 'B1 B2']);
    expect(read('a1: PLED+\nA2: PLED-\nb1 - HDLED+\nB2 HDLED-', grid)).toBe(
      'A1 power-led-feed, A2 power-led-sink, B1 drive-led-feed, B2 drive-led-sink',
    );
    expect(read('A1, B1: GND\nA2-B2: NC', grid)).toMatch(/A1 ground.*B1 ground/);
    expect(read('a1: PLED+\nA2: PLED-', labelled(['a1 a2']))).toBe('a1 power-led-feed, a2 power-led-sink');
    expect(read('PLED+ ... a1\nPLED- ... A2\nGND ... a3', labelled(['a1 a2 a3']))).toBe(
      'a1 power-led-feed, a2 power-led-sink, a3 ground',
    );
    expect(read('A1-a3: GND', labelled(['a1 a2 a3']))).toBe('a1 ground, a2 ground, a3 ground');
    // Both cases of a letter are two positions where a connector has both.
    expect(read('a1 PLED+\nA1 GND', labelled(['a1 A1']))).toBe('a1 power-led-feed, A1 ground');
  });

  it('may be a drawing of the connector, row above row', () => {
    expect(read('PLED-  PWRSW  GND\nPLED+  GND    RST', zigZag(3))).toBe(
      '1 power-led-feed, 2 power-led-sink, 3 ground, 4 power-switch-input, 5 reset-switch-input, 6 ground',
    );
  });

  it('may be a drawing of the header with lines of labels beside lines of words', () => {
    const text = 'PLED-  PWRSW  GND\n  2      4     6\n  1      3     5\nPLED+   GND   RST';
    expect(read(text, zigZag(3))).toBe(
      '1 power-led-feed, 2 power-led-sink, 3 ground, 4 power-switch-input, 5 reset-switch-input, 6 ground',
    );
    expect(read('1 2 3\nGND +12V TACH', singleRow(3))).toBe('1 ground, 2 fan-supply, 3 fan-tach');
  });

  it('may have its labels at the ends of its lines', () => {
    expect(read('TACH ..... 3\n+12V ..... 2\nGround ... 1', singleRow(3))).toBe(
      '1 ground, 2 fan-supply, 3 fan-tach',
    );
  });

  it('may name the header before every number, but no word is taken for such a name', () => {
    expect(read('FAN1-1: GND\nFAN1-2: +12V\nFAN1-3: TACH', singleRow(3))).toBe(
      '1 ground, 2 fan-supply, 3 fan-tach',
    );
    expect(read('GND 1\nGND 3\nGND 2', singleRow(3))).toBe('1 ground, 2 ground, 3 ground');
  });

  it('may name signs behind what they are for, and mark its numbers in a run', () => {
    expect(read('Power LED: pin 1 (+), pin 3 (-)', singleRow(3))).toBe('1 power-led-feed, 3 power-led-sink');
    expect(read('1:VCC 2:D- 3:D+ 4:GND', singleRow(4))).toBe(
      '1 usb-vbus, 2 usb-d-minus, 3 usb-d-plus, 4 ground',
    );
  });

  it('may have columns with a single space between them, as a page is often copied', () => {
    const meant = ['drive-led-feed', 'power-led-feed', 'drive-led-sink', 'power-led-sink'];
    const six = [...meant, 'ground', 'power-switch-input', 'reset-switch-input', 'ground'];
    const odd = '1 HDLED+ 2 PLED+\n3 HDLED- 4 PLED-\n5 GND 6 PWRBTN#\n7 RST# 8 GND\n9 NC';
    expect(signals(odd, zigZag(5))).toEqual([...six, 'no-connection']);
    expect(signals('1 HDLED+ 2 PLED+ 3 HDLED- 4 PLED-', zigZag(2))).toEqual(meant);
    expect(signals('2 PLED+ 1 HDLED+\n4 PLED- 3 HDLED-', zigZag(2))).toEqual(meant);
    expect(signals('1 HDLED+ 3 HDLED-\n2 PLED+ 4 PLED-', zigZag(2))).toEqual(meant);
    expect(signals('Pin 1 GND Pin 2 +12V\nPin 3 TACH Pin 4 PWM', singleRow(4))).toEqual([
      'ground',
      'fan-supply',
      'fan-tach',
      'fan-pwm',
    ]);
  });

  it('has no second column where a number belongs to the name of a port', () => {
    expect(signals('1 USB 2 D+\n3 USB 2 D-', zigZag(2))).toEqual(['usb-d-plus', 'usb-d-minus']);
    expect(signals('1 PORT 2 D+', zigZag(2))).toEqual(['usb-d-plus']);
  });

  it('may have all labels first and then all words', () => {
    expect(read('1\n2\n3\nGND\n+12V\nTACH', singleRow(3))).toBe('1 ground, 2 fan-supply, 3 fan-tach');
  });

  it('may have its words before their pins on the left and behind them on the right', () => {
    expect(read('PLED+ | 1 | 2 | HDLED+\nPLED- | 3 | 4 | HDLED-', zigZag(2))).toBe(
      '1 power-led-feed, 2 drive-led-feed, 3 power-led-sink, 4 drive-led-sink',
    );
  });

  it('may have columns that say nothing of the signal', () => {
    const text = 'Pin\tColour\tSignal\tType\n1\tblack\tGND\tP\n2\tyellow\t+12V\tP\n3\tgreen\tSENSE\tI';
    expect(read(text, singleRow(3))).toBe('1 ground, 2 fan-supply, 3 fan-tach');
  });
});

describe('a table under a head', () => {
  const meant = '1 drive-led-feed, 6 power-switch-input, 7 reset-switch-input, 8 ground';
  const head = 'Pin   Level   Signal   Description';
  const rows = ['1  5V  HDLED+', '6  3.3V  PWRBTN#', '7  3.3V  RST#', '8  0V  GND'];

  it('is read from the column of the signals where the last cells of a row are blank', () => {
    const list = [head, ...rows].join('\n');
    expect(read(list, zigZag(5))).toBe(meant);
    expect(read(list.replace(/ {2,}/g, '\t'), zigZag(5))).toBe(meant);
    expect(read(list.replace(/ {2,}/g, ' | '), zigZag(5))).toBe(meant);
  });

  it('keeps to its columns where a cell between others is blank and the columns stand in line', () => {
    const list = [
      'Pin  Level  Signal   Description',
      '  1  5V     HDLED+   lights up',
      '  5         GND',
      '  6  3.3V   PWRBTN#',
      '  7  3.3V',
    ].join('\n');
    expect(read(list, zigZag(5))).toBe('1 drive-led-feed, 5 ground, 6 power-switch-input, 7 ?');
  });

  it('never takes what stands under another head for a signal that is left blank', () => {
    const rows = [
      ['Pin', 'Level', 'Signal'],
      ['1', '5V'],
      ['2', '0V', 'GND'],
    ];
    for (const gap of ['\t', '  ', ' | '])
      expect(read(rows.map((row) => row.join(gap)).join('\n'), zigZag(5)), gap).toBe('1 ?, 2 ground');
  });

  it('may call the column of the signals by a name that is not known', () => {
    const rows = '1\tblack\tGND\n2\tyellow\t+12V\n3\tgreen\tSENSE\n4\tblue\tPWM';
    for (const heads of ['Colour\tSignal/Function', 'Wire\tCircuit', 'Type\tPort', 'Wire colour\tPotential'])
      expect(read(`Pin\t${heads}\n${rows}`, singleRow(4)), heads).toBe(
        '1 ground, 2 fan-supply, 3 fan-tach, 4 fan-pwm',
      );
    expect(read(`Pin\tColour\tType\n${rows}`, singleRow(4))).toBe('1 ?, 2 ?, 3 ?, 4 ?');
  });

  it('may count its rows beside its pins', () => {
    const rows = '1\t6\tPWRBTN#\n2\t7\tRST#\n3\t8\tGND';
    for (const heads of ['No.\tPin\tSignal', 'No.\tPin number\tPotential', '#\tContact\tSignal'])
      expect(read(`${heads}\n${rows}`, zigZag(5)), heads).toBe(
        '6 power-switch-input, 7 reset-switch-input, 8 ground',
      );
    expect(read('Pin\tNo.\tSignal\n6\t1\tPWRBTN#\n7\t2\tRST#', zigZag(5))).toBe(
      '6 power-switch-input, 7 reset-switch-input',
    );
  });

  it('may have all its pins before all its signals', () => {
    expect(read('Pin\tPin\tSignal\tSignal\n1\t2\tHDLED+\tPLED+\n3\t4\tHDLED-\tPLED-', zigZag(5))).toBe(
      '1 drive-led-feed, 2 power-led-feed, 3 drive-led-sink, 4 power-led-sink',
    );
  });

  it('has two columns of pins, the last of which ends a row before the first', () => {
    const list = 'Pin  Signal  Pin  Signal\n1  HDLED+  2  PLED+\n5  GND  6\n9  NC';
    expect(read(list, zigZag(5))).toBe('1 drive-led-feed, 2 power-led-feed, 5 ground, 6 ?, 9 no-connection');
  });
});

describe('a word that says too little', () => {
  it('is not understood where nothing stands beside the label, and is no gap', () => {
    const list = '1 HDLED+\n6\nPower switch input\n10 --';
    expect(read(list, zigZag(5))).toBe('1 drive-led-feed, 6 ?, 10 no pin');
    expect(problems(list, zigZag(5))).toContain('Nothing was made of line 3');
  });

  it('is settled by what else stands on the header', () => {
    expect(read('1 +5V\n2 NC\n3 NC\n4 SPK', singleRow(4))).toMatch(/^1 speaker-feed/);
    expect(read('1 VCC\n2 D-\n3 D+\n4 GND', singleRow(4))).toMatch(/^1 usb-vbus/);
    expect(read('1 GND\n2 VCC\n3 SENSE\n4 PWM', singleRow(4))).toBe(
      '1 ground, 2 fan-supply, 3 fan-tach, 4 fan-pwm',
    );
    expect(read('1 TX\n2 RX\n3 RTS\n4 CTS', singleRow(4))).toMatch(/^1 serial-txd, 2 serial-rxd/);
  });

  it('is settled by the name of the header', () => {
    expect(read('1 GND\n2 VCC', singleRow(2), 'fan at the rear')).toBe('1 ground, 2 fan-supply');
    expect(read('1 +\n2 NC\n3 -', singleRow(3))).toMatch(/^1 \?/);
    expect(read('1 LED+\n2 NC\n3 LED-', singleRow(3), 'power LED')).toBe(
      '1 power-led-feed, 2 no-connection, 3 power-led-sink',
    );
  });

  it('is a guess where only the order of real headers tells', () => {
    const { pins } = reading('1 HD LED\n2 HD LED\n3 PWR SW\n4 PWR SW', singleRow(4));
    expect(pins.map(({ signal, how }) => [signal, how])).toEqual([
      ['drive-led-feed', 'guessed'],
      ['drive-led-sink', 'guessed'],
      ['power-switch-input', 'exact'],
      ['ground', 'guessed'],
    ]);
    expect(pins[1]?.confidence).toBeLessThan(pins[2]?.confidence ?? 0);
  });

  it('leaves the other side to a sign that stands alone', () => {
    expect(read('1 HDD LED+\n2 -', singleRow(2))).toBe('1 drive-led-feed, 2 drive-led-sink');
  });

  it('takes LEDs on a common supply for switched ones', () => {
    expect(read('1 +5V\n2 PLED\n3 HDLED', singleRow(3))).toBe(
      '1 supply-5v, 2 power-led-sink, 3 drive-led-sink',
    );
  });
});

describe('grounds and ports', () => {
  it('take a three behind a supply for the port where the data lines of a port 3 stand beside it', () => {
    const text = '1 VCC3\n2 VCC4\n3 D3-\n4 D4-\n5 D3+\n6 D4+\n7 GND\n8 GND';
    const { pins } = reading(text, zigZag(5));
    expect(pins.slice(0, 2).map(({ signal, channel, how }) => [signal, channel, how])).toEqual([
      ['usb-vbus', '3', 'neighbours'],
      ['usb-vbus', '4', 'neighbours'],
    ]);
    expect(read('1 VCC3\n2 GND\n3 NC', singleRow(3))).toMatch(/^1 supply-3v3/);
    expect(read('1 VCC3\n2 D1-\n3 D1+', singleRow(3))).toMatch(/^1 supply-3v3/);
  });

  it('belong to the input beside them, as 5 to 7 and 8 to 6 of the panel', () => {
    const text = '5 GND\n6 PWR SW\n7 RESET\n8 GND';
    const { pins } = reading(text, zigZag(5));
    expect(pins.map(({ label, belongsTo }) => `${label} ${belongsTo ?? ''}`.trim())).toEqual([
      '5 reset-switch',
      '6',
      '7',
      '8 power-switch',
    ]);
  });

  it('are those of their row where only the data lines have a number', () => {
    const { pins } = reading('1 +5V\n2 +5V\n3 USB0-\n4 USB1-\n5 USB0+\n6 USB1+\n7 GND\n8 GND', zigZag(5));
    expect(pins.map(({ channel }) => channel).join('')).toBe('01010101');
    expect(pins.every(({ belongsTo, signal }) => signal !== 'ground' || belongsTo === 'usb2')).toBe(true);
  });
});

describe('a list that contradicts itself', () => {
  it('is told of a pin that stands twice, and keeps what both lines say', () => {
    const text = '1 GND\n2 +12V\n2 TACH\n3 PWM';
    expect(problems(text, singleRow(4))).toContain(
      'Pin 2 stands in lines 2 and 3 with different words: “+12V” and “TACH”',
    );
    const pin = reading(text, singleRow(4)).pins[1];
    expect([pin?.signal, pin?.or]).toEqual(['fan-supply', [{ signal: 'fan-tach', name: 'TACH' }]]);
    const [first] = reading('1 FROB\n1 GND', singleRow(1)).pins;
    expect([first?.word, first?.signal, first?.or]).toEqual([
      'GND',
      'ground',
      [{ signal: 'unknown', name: 'FROB' }],
    ]);
  });

  it('is told of more pins than the connector has', () => {
    expect(problems('1 PLED+\n2 PLED-\n3 HDLED+\n4 HDLED-', singleRow(2))).toContain(
      'The list has pins 3 and 4, and the connector has 2 positions without them',
    );
  });

  it('is told of an LED that has two pluses, and of one without a minus', () => {
    expect(problems('1 PLED+\n2 PLED+\n3 NC', singleRow(3))).toEqual([
      'Power LED + stands on pins 1 and 2',
      'Power LED + on pins 1 and 2 has no power LED − beside it',
    ]);
  });

  it('is told of gaps, of lines that were left over and of words that were counted off', () => {
    const text = 'Panel\n1 PLED+\n2 PLED-\nfor details see the service manual\n4 GND';
    expect(problems(text, singleRow(5))).toEqual([
      'The list says nothing of pins 3 and 5',
      'Nothing was made of line 4',
    ]);
    expect(problems('GND\n+12V\nTACH', singleRow(3))).toEqual([
      'No line has a number: the words are counted off from pin 1 on',
    ]);
  });

  it('is read for a connector of 40 × 2 pins as for any other', () => {
    const text = Array.from({ length: 80 }, (_, at) => `${at + 1} GND`).join('\n');
    expect(reading(text, zigZag(40)).pins).toHaveLength(80);
  });
});

describe('a text that is no list', () => {
  it('is refused with what was found and what to do', () => {
    expect(refused('')).toMatch(/^There is no list yet\. Paste the lines/);
    expect(refused(' \n\t\n ')).toMatch(/^There is no list yet/);
    expect(refused('Dear customer,\nthank you for your letter')).toMatch(
      /^No pin was found in “Dear customer,”\. Put one pin in a line/,
    );
    expect(refused('A1 PLED+\nA2 PLED-\nA3 GND')).toBe(
      'The connector has no pins A1, A2 and A3. It counts pins 1, 2, 3, 4, 5, 6 and 4 more. Number the connector as the list does, or choose another one.',
    );
    expect(refused('101 GND\n102 NC')).toMatch(/^The connector has no pins 101 and 102/);
  });

  it('is refused when it is too long, and read when it is as long as the limit', () => {
    const { characters, lines } = PIN_LIST_LIMITS;
    const list = '1 GND\n2 NC';
    expect(readPinList(list + ' '.repeat(characters - list.length), { grid: zigZag(5) }).ok).toBe(true);
    expect(refused(list + ' '.repeat(characters - list.length + 1))).toMatch(
      /^The text has 1,000,001 characters, and at most 1,000,000 are read/,
    );
    const many = (count: number) => Array.from({ length: count }, (_, at) => `${at % 10} GND`).join('\n');
    expect(readPinList(many(lines), { grid: zigZag(5) }).ok).toBe(true);
    expect(refused(many(lines + 1))).toMatch(/^The text has 5,001 lines, and at most 5,000 are read/);
    expect(refused(many(10_000))).toMatch(/^The text has 10,000 lines/);
  });
});
