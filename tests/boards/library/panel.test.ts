import { follows, MEMORY, SECONDARY, SOURCE } from './published';

const ZIG_ZAG = ['2 4 6 8 10', '1 3 5 7 9'];
const RECALLED = 'from memory';

follows('panel-2x5', {
  papers:
    'Front Panel I/O Connectivity Design Guide v1.3 (2005): pairs 2.2.2.1 to 2.2.2.4, key Figure 10, order Figure 3; ' +
    'polarity from assembly notes and a board manual; names 2.2.5 from memory',
  pitchMm: 2.54,
  pitchFrom: RECALLED,
  seen: ZIG_ZAG,
  rows: [
    ['1', 'HD_PWR', 'drive-led-feed', SECONDARY],
    ['2', 'FP PWR/SLP', 'power-led-feed', SECONDARY],
    ['3', 'HAD#', 'drive-led-sink', SECONDARY],
    ['4', 'FP PWR/SLP', 'power-led-sink', SECONDARY],
    ['5', 'RST_SW−', 'ground', SECONDARY],
    ['6', 'PWR_SW+', 'power-switch-input', SECONDARY],
    ['7', 'RST_SW+', 'reset-switch-input', SECONDARY],
    ['8', 'PWR_SW−', 'ground', SECONDARY],
    ['9', 'RSVD', 'reserved', SECONDARY],
    ['10', 'KEY', 'KEY', SOURCE],
  ],
});

follows('panel-2x5-supply', {
  papers: 'older board manuals, +5 V on pin 9 (from memory); the rest as the panel above',
  pitchMm: 2.54,
  pitchFrom: RECALLED,
  seen: ZIG_ZAG,
  rows: [
    ['1', 'HD_PWR', 'drive-led-feed', SECONDARY],
    ['2', 'FP PWR/SLP', 'power-led-feed', SECONDARY],
    ['3', 'HAD#', 'drive-led-sink', SECONDARY],
    ['4', 'FP PWR/SLP', 'power-led-sink', SECONDARY],
    ['5', 'RST_SW−', 'ground', SECONDARY],
    ['6', 'PWR_SW+', 'power-switch-input', SECONDARY],
    ['7', 'RST_SW+', 'reset-switch-input', SECONDARY],
    ['8', 'PWR_SW−', 'ground', SECONDARY],
    ['9', '+5 V', 'supply-5v', MEMORY],
    ['10', 'KEY', 'KEY', SOURCE],
  ],
});

follows('power-led-1x3', {
  papers: 'two board technical product specifications: auxiliary power LED header',
  pitchMm: 2.54,
  pitchFrom: RECALLED,
  seen: ['1 2 3'],
  rows: [
    ['1', 'FP_LED+', 'power-led-feed', SOURCE],
    ['2', 'KEY', 'KEY', SOURCE],
    ['3', 'FP_LED−', 'power-led-sink', SOURCE],
  ],
});

follows('power-led-key-lock-1x5', {
  papers: 'a tutorial on older boards',
  pitchMm: 2.54,
  pitchFrom: RECALLED,
  seen: ['1 2 3 4 5'],
  rows: [
    ['1', 'LED+', 'power-led-feed', SECONDARY],
    ['2', 'NC', 'no-connection', SECONDARY],
    ['3', 'LED ground', 'ground', SECONDARY],
    ['4', 'KEYLOCK', 'key-lock-input', SECONDARY],
    ['5', 'KEYLOCK ground', 'ground', SECONDARY],
  ],
});

follows('speaker-1x4', {
  papers: 'the order of most board manuals (from memory)',
  pitchMm: 2.54,
  pitchFrom: RECALLED,
  seen: ['1 2 3 4'],
  rows: [
    ['1', '+5 V', 'speaker-feed', MEMORY],
    ['2', 'NC', 'no-connection', MEMORY],
    ['3', 'NC', 'no-connection', MEMORY],
    ['4', 'SPK', 'speaker-drive', MEMORY],
  ],
});

follows('speaker-1x4-reversed', {
  papers: 'an encyclopaedia: 1 speaker −, 2 empty, 3 ground, 4 +5 V',
  pitchMm: 2.54,
  pitchFrom: RECALLED,
  seen: ['1 2 3 4'],
  rows: [
    ['1', 'SPK−', 'speaker-drive', SECONDARY],
    ['2', 'NC', 'no-connection', SECONDARY],
    ['3', 'GND', 'ground', SECONDARY],
    ['4', '+5 V', 'speaker-feed', SECONDARY],
  ],
});

follows('case-open-1x2', {
  papers: 'one board product guide',
  pitchMm: 2.54,
  pitchFrom: RECALLED,
  seen: ['1 2'],
  rows: [
    ['1', 'INTRUDER', 'case-open-input', SOURCE],
    ['2', 'GND', 'ground', SOURCE],
  ],
});

follows('case-open-1x2-ground-first', {
  papers: 'another board product guide of the same maker',
  pitchMm: 2.54,
  pitchFrom: RECALLED,
  seen: ['1 2'],
  rows: [
    ['1', 'GND', 'ground', SOURCE],
    ['2', 'INTRUDER#', 'case-open-input', SOURCE],
  ],
});

follows('clear-settings-1x3', {
  papers: 'common practice, no source: cap on 1-2 to keep, on 2-3 to clear',
  pitchMm: 2.54,
  pitchFrom: RECALLED,
  seen: ['1 2 3'],
  rows: [
    ['1', 'KEEP', 'no-connection', MEMORY],
    ['2', 'CLEAR', 'clear-settings', MEMORY],
    ['3', 'GND', 'ground', MEMORY],
  ],
});
