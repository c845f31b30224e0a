import { follows, MEMORY, SECONDARY, SOURCE } from './published';

const ZIG_ZAG = ['2 4 6 8 10', '1 3 5 7 9'];

follows('ieee1394-2x5', {
  papers: 'a board product guide: IEEE 1394a header, key at 9',
  pitchMm: 2.54,
  pitchFrom: 'from memory',
  seen: ZIG_ZAG,
  rows: [
    ['1', 'TPA1+', 'ieee1394-tpa-plus', SOURCE],
    ['2', 'TPA1−', 'ieee1394-tpa-minus', SOURCE],
    ['3', 'GND', 'ground', SOURCE],
    ['4', 'GND', 'ground', SOURCE],
    ['5', 'TPA2+', 'ieee1394-tpb-plus', SOURCE],
    ['6', 'TPA2−', 'ieee1394-tpb-minus', SOURCE],
    ['7', '+12 V', 'ieee1394-power', SOURCE],
    ['8', '+12 V', 'ieee1394-power', SOURCE],
    ['9', 'KEY', 'KEY', SOURCE],
    ['10', 'GND', 'ground', SOURCE],
  ],
});

follows('serial-2x5-ribbon', {
  papers: 'a single-board computer’s manual and a pinout page',
  pitchMm: 2.54,
  pitchFrom: 'from memory',
  seen: ZIG_ZAG,
  rows: [
    ['1', 'DCD', 'serial-dcd', SECONDARY],
    ['2', 'DSR', 'serial-dsr', SECONDARY],
    ['3', 'RXD', 'serial-rxd', SECONDARY],
    ['4', 'RTS', 'serial-rts', SECONDARY],
    ['5', 'TXD', 'serial-txd', SECONDARY],
    ['6', 'CTS', 'serial-cts', SECONDARY],
    ['7', 'DTR', 'serial-dtr', SECONDARY],
    ['8', 'RI', 'serial-ri', SECONDARY],
    ['9', 'GND', 'ground', SECONDARY],
    ['10', 'KEY', 'KEY', SECONDARY],
  ],
});

follows('serial-2x5-straight', {
  papers: 'the order of the 9-pin plug, from memory',
  pitchMm: 2.54,
  pitchFrom: 'from memory',
  seen: ZIG_ZAG,
  rows: [
    ['1', 'DCD', 'serial-dcd', MEMORY],
    ['2', 'RXD', 'serial-rxd', MEMORY],
    ['3', 'TXD', 'serial-txd', MEMORY],
    ['4', 'DTR', 'serial-dtr', MEMORY],
    ['5', 'GND', 'ground', MEMORY],
    ['6', 'DSR', 'serial-dsr', MEMORY],
    ['7', 'RTS', 'serial-rts', MEMORY],
    ['8', 'CTS', 'serial-cts', MEMORY],
    ['9', 'RI', 'serial-ri', MEMORY],
    ['10', 'KEY', 'KEY', MEMORY],
  ],
});
