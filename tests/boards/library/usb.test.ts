import { follows, MEMORY, SECONDARY, SOURCE } from './published';

follows('usb2-2x5', {
  papers: 'two board product guides: USB 2.0 front-panel header, key at 9',
  pitchMm: 2.54,
  pitchFrom: 'from memory',
  seen: ['2 4 6 8 10', '1 3 5 7 9'],
  rows: [
    ['1', '+5 V', 'usb-vbus', SOURCE, 'A'],
    ['2', '+5 V', 'usb-vbus', SOURCE, 'B'],
    ['3', 'D−', 'usb-d-minus', SOURCE, 'A'],
    ['4', 'D−', 'usb-d-minus', SOURCE, 'B'],
    ['5', 'D+', 'usb-d-plus', SOURCE, 'A'],
    ['6', 'D+', 'usb-d-plus', SOURCE, 'B'],
    ['7', 'GND', 'ground', SOURCE, 'A'],
    ['8', 'GND', 'ground', SOURCE, 'B'],
    ['9', 'KEY', 'KEY', SOURCE],
    ['10', 'NC', 'no-connection', SOURCE],
  ],
});

follows('usb2-2x5-over-current', {
  papers: 'a case maker in an owners’ thread: over-current on pin 10; the rest as the header above',
  pitchMm: 2.54,
  pitchFrom: 'from memory',
  seen: ['2 4 6 8 10', '1 3 5 7 9'],
  rows: [
    ['1', '+5 V', 'usb-vbus', SOURCE, 'A'],
    ['2', '+5 V', 'usb-vbus', SOURCE, 'B'],
    ['3', 'D−', 'usb-d-minus', SOURCE, 'A'],
    ['4', 'D−', 'usb-d-minus', SOURCE, 'B'],
    ['5', 'D+', 'usb-d-plus', SOURCE, 'A'],
    ['6', 'D+', 'usb-d-plus', SOURCE, 'B'],
    ['7', 'GND', 'ground', SOURCE, 'A'],
    ['8', 'GND', 'ground', SOURCE, 'B'],
    ['9', 'KEY', 'KEY', SOURCE],
    ['10', 'OC#', 'usb-over-current', SECONDARY],
  ],
});

follows('usb3-19', {
  papers:
    'USB 3.0 Internal Connector and Cable Specification as a board manual lists it: ' +
    '1 to 10 along one row, 11 to 20 back along the other, no pin at 20',
  pitchMm: 2,
  pitchFrom: 'a pinout page',
  seen: ['20 19 18 17 16 15 14 13 12 11', '1 2 3 4 5 6 7 8 9 10'],
  rows: [
    ['1', 'VBUS', 'usb3-vbus', SECONDARY, '1'],
    ['2', 'SSRX1−', 'usb3-ssrx-minus', SECONDARY, '1'],
    ['3', 'SSRX1+', 'usb3-ssrx-plus', SECONDARY, '1'],
    ['4', 'GND', 'ground', SECONDARY, '1'],
    ['5', 'SSTX1−', 'usb3-sstx-minus', SECONDARY, '1'],
    ['6', 'SSTX1+', 'usb3-sstx-plus', SECONDARY, '1'],
    ['7', 'GND', 'ground', SECONDARY, '1'],
    ['8', 'D1−', 'usb3-d-minus', SECONDARY, '1'],
    ['9', 'D1+', 'usb3-d-plus', SECONDARY, '1'],
    ['10', 'NC', 'no-connection', SECONDARY],
    ['11', 'D2+', 'usb3-d-plus', SECONDARY, '2'],
    ['12', 'D2−', 'usb3-d-minus', SECONDARY, '2'],
    ['13', 'GND', 'ground', SECONDARY, '2'],
    ['14', 'SSTX2+', 'usb3-sstx-plus', SECONDARY, '2'],
    ['15', 'SSTX2−', 'usb3-sstx-minus', SECONDARY, '2'],
    ['16', 'GND', 'ground', SECONDARY, '2'],
    ['17', 'SSRX2+', 'usb3-ssrx-plus', SECONDARY, '2'],
    ['18', 'SSRX2−', 'usb3-ssrx-minus', SECONDARY, '2'],
    ['19', 'VBUS', 'usb3-vbus', SECONDARY, '2'],
    ['20', 'KEY', 'KEY', SECONDARY],
  ],
});

follows('usb-c-front-20', {
  papers: 'USB Type-C front-panel implementation document rev 1.0 (2017), all from memory',
  pitchMm: 1,
  pitchFrom: 'from memory',
  seen: ['1 2 3 4 5 6 7 8 9 10', '11 12 13 14 15 16 17 18 19 20'],
  rows: [
    ['1', 'VBUS', 'usbc-vbus', MEMORY],
    ['2', 'TX1+', 'usbc-tx1-plus', MEMORY],
    ['3', 'TX1−', 'usbc-tx1-minus', MEMORY],
    ['4', 'GND', 'ground', MEMORY],
    ['5', 'RX1+', 'usbc-rx1-plus', MEMORY],
    ['6', 'RX1−', 'usbc-rx1-minus', MEMORY],
    ['7', 'VBUS', 'usbc-vbus', MEMORY],
    ['8', 'CC1', 'usbc-cc1', MEMORY],
    ['9', 'SBU1', 'usbc-sbu1', MEMORY],
    ['10', 'SBU2', 'usbc-sbu2', MEMORY],
    ['11', 'VBUS', 'usbc-vbus', MEMORY],
    ['12', 'TX2+', 'usbc-tx2-plus', MEMORY],
    ['13', 'TX2−', 'usbc-tx2-minus', MEMORY],
    ['14', 'GND', 'ground', MEMORY],
    ['15', 'RX2+', 'usbc-rx2-plus', MEMORY],
    ['16', 'RX2−', 'usbc-rx2-minus', MEMORY],
    ['17', 'GND', 'ground', MEMORY],
    ['18', 'D−', 'usbc-d-minus', MEMORY],
    ['19', 'D+', 'usbc-d-plus', MEMORY],
    ['20', 'CC2', 'usbc-cc2', MEMORY],
  ],
});
