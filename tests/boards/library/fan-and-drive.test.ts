import { follows, MEMORY, SECONDARY } from './published';

const HANDBOOK_PITCH = 'a hardware handbook: 0.050 in';

follows('fan-1x4', {
  papers: '4-Wire PWM Controlled Fans Specification rev 1.3 (2005), Table 1, as quoted by owners',
  pitchMm: 2.54,
  pitchFrom: 'from memory',
  seen: ['1 2 3 4'],
  rows: [
    ['1', 'GND', 'ground', SECONDARY],
    ['2', '+12 V', 'fan-supply', SECONDARY],
    ['3', 'SENSE', 'fan-tach', SECONDARY],
    ['4', 'CONTROL', 'fan-pwm', SECONDARY],
  ],
});

follows('fan-1x3', {
  papers: 'the three-wire order, from memory',
  pitchMm: 2.54,
  pitchFrom: 'from memory',
  seen: ['1 2 3'],
  rows: [
    ['1', 'GND', 'ground', MEMORY],
    ['2', '+12 V', 'fan-supply', MEMORY],
    ['3', 'TACH', 'fan-tach', MEMORY],
  ],
});

follows('sata-data-7', {
  papers: 'a hardware handbook, Table 13-8; a controller design guide agrees',
  pitchMm: 1.27,
  pitchFrom: HANDBOOK_PITCH,
  seen: ['1 2 3 4 5 6 7'],
  rows: [
    ['1', 'GND', 'ground', SECONDARY],
    ['2', 'A+', 'sata-a-plus', SECONDARY],
    ['3', 'A−', 'sata-a-minus', SECONDARY],
    ['4', 'GND', 'ground', SECONDARY],
    ['5', 'B−', 'sata-b-minus', SECONDARY],
    ['6', 'B+', 'sata-b-plus', SECONDARY],
    ['7', 'GND', 'ground', SECONDARY],
  ],
});

follows('sata-power-15', {
  papers: 'a hardware handbook, Table 13-7 (tables on hobby pages with 5 V at 6 to 8 are wrong)',
  pitchMm: 1.27,
  pitchFrom: HANDBOOK_PITCH,
  seen: ['1 2 3 4 5 6 7 8 9 10 11 12 13 14 15'],
  rows: [
    ['1', '+3.3 V', 'supply-3v3', SECONDARY],
    ['2', '+3.3 V', 'supply-3v3', SECONDARY],
    ['3', '+3.3 V', 'supply-3v3', SECONDARY],
    ['4', 'GND', 'ground', SECONDARY],
    ['5', 'GND', 'ground', SECONDARY],
    ['6', 'GND', 'ground', SECONDARY],
    ['7', '+5 V', 'supply-5v', SECONDARY],
    ['8', '+5 V', 'supply-5v', SECONDARY],
    ['9', '+5 V', 'supply-5v', SECONDARY],
    ['10', 'GND', 'ground', SECONDARY],
    ['11', 'reserved', 'drive-spin-up', SECONDARY],
    ['12', 'GND', 'ground', SECONDARY],
    ['13', '+12 V', 'supply-12v', SECONDARY],
    ['14', '+12 V', 'supply-12v', SECONDARY],
    ['15', '+12 V', 'supply-12v', SECONDARY],
  ],
});

follows('peripheral-power-1x4', {
  papers: 'trade knowledge, from memory',
  pitchMm: 5.08,
  pitchFrom: 'from memory',
  seen: ['1 2 3 4'],
  rows: [
    ['1', '+12 V', 'supply-12v', MEMORY],
    ['2', 'COM', 'ground', MEMORY],
    ['3', 'COM', 'ground', MEMORY],
    ['4', '+5 V', 'supply-5v', MEMORY],
  ],
});
