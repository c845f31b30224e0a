import { follows, SECONDARY, SOURCE } from './published';

follows('main-power-24', {
  papers: 'microATX specification v1.2 (2004), Figure 8',
  pitchMm: 4.2,
  pitchFrom: 'from memory',
  seen: ['1 2 3 4 5 6 7 8 9 10 11 12', '13 14 15 16 17 18 19 20 21 22 23 24'],
  rows: [
    ['1', '+3.3 V', 'supply-3v3', SOURCE],
    ['2', '+3.3 V', 'supply-3v3', SOURCE],
    ['3', 'COM', 'ground', SOURCE],
    ['4', '+5 V', 'supply-5v', SOURCE],
    ['5', 'COM', 'ground', SOURCE],
    ['6', '+5 V', 'supply-5v', SOURCE],
    ['7', 'COM', 'ground', SOURCE],
    ['8', 'PWR_OK', 'power-ok', SOURCE],
    ['9', '+5 VSB', 'supply-5v-standby', SOURCE],
    ['10', '+12 V', 'supply-12v', SOURCE],
    ['11', '+12 V', 'supply-12v', SOURCE],
    ['12', '+3.3 V', 'supply-3v3', SOURCE],
    ['13', '+3.3 V', 'supply-3v3', SOURCE],
    ['14', '−12 V', 'supply-minus-12v', SOURCE],
    ['15', 'COM', 'ground', SOURCE],
    ['16', 'PS_ON#', 'ps-on', SOURCE],
    ['17', 'COM', 'ground', SOURCE],
    ['18', 'COM', 'ground', SOURCE],
    ['19', 'COM', 'ground', SOURCE],
    ['20', 'NC', 'no-connection', SOURCE],
    ['21', '+5 V', 'supply-5v', SOURCE],
    ['22', '+5 V', 'supply-5v', SOURCE],
    ['23', '+5 V', 'supply-5v', SOURCE],
    ['24', 'COM', 'ground', SOURCE],
  ],
});

follows('main-power-20', {
  papers: 'ATX specification 2.01, from a copy on the web',
  pitchMm: 4.2,
  pitchFrom: 'from memory',
  seen: ['1 2 3 4 5 6 7 8 9 10', '11 12 13 14 15 16 17 18 19 20'],
  rows: [
    ['1', '+3.3 V', 'supply-3v3', SECONDARY],
    ['2', '+3.3 V', 'supply-3v3', SECONDARY],
    ['3', 'COM', 'ground', SECONDARY],
    ['4', '+5 V', 'supply-5v', SECONDARY],
    ['5', 'COM', 'ground', SECONDARY],
    ['6', '+5 V', 'supply-5v', SECONDARY],
    ['7', 'COM', 'ground', SECONDARY],
    ['8', 'PWR_OK', 'power-ok', SECONDARY],
    ['9', '+5 VSB', 'supply-5v-standby', SECONDARY],
    ['10', '+12 V', 'supply-12v', SECONDARY],
    ['11', '+3.3 V and sense', 'supply-3v3', SECONDARY],
    ['12', '−12 V', 'supply-minus-12v', SECONDARY],
    ['13', 'COM', 'ground', SECONDARY],
    ['14', 'PS_ON#', 'ps-on', SECONDARY],
    ['15', 'COM', 'ground', SECONDARY],
    ['16', 'COM', 'ground', SECONDARY],
    ['17', 'COM', 'ground', SECONDARY],
    ['18', '−5 V', 'supply-minus-5v', SECONDARY],
    ['19', '+5 V', 'supply-5v', SECONDARY],
    ['20', '+5 V', 'supply-5v', SECONDARY],
  ],
});

follows('cpu-power-2x2', {
  papers: 'ATX 3.0 power supply design guide (336521), Table 5-8',
  pitchMm: 4.2,
  pitchFrom: 'from memory',
  seen: ['1 2', '3 4'],
  rows: [
    ['1', 'COM', 'ground', SOURCE],
    ['2', 'COM', 'ground', SOURCE],
    ['3', '+12 V', 'supply-12v', SOURCE],
    ['4', '+12 V', 'supply-12v', SOURCE],
  ],
});

follows('cpu-power-2x4', {
  papers: 'a pinout page: 1 to 4 ground, 5 to 8 +12 V',
  pitchMm: 4.2,
  pitchFrom: 'from memory',
  seen: ['1 2 3 4', '5 6 7 8'],
  rows: [
    ['1', 'COM', 'ground', SECONDARY],
    ['2', 'COM', 'ground', SECONDARY],
    ['3', 'COM', 'ground', SECONDARY],
    ['4', 'COM', 'ground', SECONDARY],
    ['5', '+12 V', 'supply-12v', SECONDARY],
    ['6', '+12 V', 'supply-12v', SECONDARY],
    ['7', '+12 V', 'supply-12v', SECONDARY],
    ['8', '+12 V', 'supply-12v', SECONDARY],
  ],
});

follows('card-power-2x3', {
  papers: 'ATX 3.0 power supply design guide (336521), Table 5-4',
  pitchMm: 4.2,
  pitchFrom: 'ATX 3.0 power supply design guide (336521), 5.2.2.4.3',
  seen: ['1 2 3', '4 5 6'],
  rows: [
    ['1', '+12 V', 'supply-12v', SOURCE],
    ['2', '+12 V', 'supply-12v', SOURCE],
    ['3', '+12 V', 'supply-12v', SOURCE],
    ['4', 'COM', 'ground', SOURCE],
    ['5', 'Sense', 'card-sense', SOURCE],
    ['6', 'COM', 'ground', SOURCE],
  ],
});

follows('card-power-2x4', {
  papers: 'ATX 3.0 power supply design guide (336521), Table 5-5',
  pitchMm: 4.2,
  pitchFrom: 'ATX 3.0 power supply design guide (336521), 5.2.2.4.3',
  seen: ['1 2 3 4', '5 6 7 8'],
  rows: [
    ['1', '+12 V', 'supply-12v', SOURCE],
    ['2', '+12 V', 'supply-12v', SOURCE],
    ['3', '+12 V', 'supply-12v', SOURCE],
    ['4', 'Sense1', 'card-sense1', SOURCE],
    ['5', 'COM', 'ground', SOURCE],
    ['6', 'Sense0', 'card-sense0', SOURCE],
    ['7', 'COM', 'ground', SOURCE],
    ['8', 'COM', 'ground', SOURCE],
  ],
});
