import { follows, SECONDARY, SOURCE } from './published';

const ZIG_ZAG = ['2 4 6 8 10', '1 3 5 7 9'];
const FIGURE_4 = 'Front Panel I/O Connectivity Design Guide v1.3 (2005), Figure 4: 100 mil';

follows('hd-audio-2x5', {
  papers: 'Front Panel I/O Connectivity Design Guide v1.3 (2005), Figure 4, and a support article',
  pitchMm: 2.54,
  pitchFrom: FIGURE_4,
  seen: ZIG_ZAG,
  rows: [
    ['1', 'PORT1 L', 'hd-mic-left', SOURCE],
    ['2', 'GND', 'ground', SOURCE],
    ['3', 'PORT1 R', 'hd-mic-right', SOURCE],
    ['4', 'PRESENCE#', 'hd-presence', SOURCE],
    ['5', 'PORT2 R', 'hd-phones-right', SOURCE],
    ['6', 'SENSE1_RETURN', 'hd-sense1-return', SOURCE],
    ['7', 'SENSE_SEND', 'hd-sense-send', SOURCE],
    ['8', 'KEY', 'KEY', SOURCE],
    ['9', 'PORT2 L', 'hd-phones-left', SOURCE],
    ['10', 'SENSE2_RETURN', 'hd-sense2-return', SOURCE],
  ],
});

follows('ac97-audio-2x5', {
  papers: 'Front Panel I/O Connectivity Design Guide v1.3 (2005), Table 6',
  pitchMm: 2.54,
  pitchFrom: 'from memory',
  seen: ZIG_ZAG,
  rows: [
    ['1', 'MIC', 'ac97-mic', SOURCE],
    ['2', 'AUD_GND', 'ground', SOURCE],
    ['3', 'MIC_BIAS', 'ac97-mic-bias', SOURCE],
    ['4', 'AUD_GND', 'ground', SOURCE],
    ['5', 'FP_OUT_R', 'ac97-out-right', SOURCE],
    ['6', 'FP_RETURN_R', 'ac97-return-right', SOURCE],
    ['7', 'AUD_5V', 'ac97-supply', SOURCE],
    ['8', 'KEY', 'KEY', SOURCE],
    ['9', 'FP_OUT_L', 'ac97-out-left', SOURCE],
    ['10', 'FP_RETURN_L', 'ac97-return-left', SOURCE],
  ],
});

follows('ac97-audio-2x5-early', {
  papers: 'an early board manual quoted by owners: +5 V on 4, headphone enable on 7',
  pitchMm: 2.54,
  pitchFrom: 'from memory',
  seen: ZIG_ZAG,
  rows: [
    ['1', 'MIC', 'ac97-mic', SECONDARY],
    ['2', 'AUD_GND', 'ground', SECONDARY],
    ['3', 'MIC_BIAS', 'ac97-mic-bias', SECONDARY],
    ['4', 'AUD_VCC', 'ac97-supply', SECONDARY],
    ['5', 'FP_OUT_R', 'ac97-out-right', SECONDARY],
    ['6', 'FP_RETURN_R', 'ac97-return-right', SECONDARY],
    ['7', 'HP_ON', 'ac97-phones-on', SECONDARY],
    ['8', 'KEY', 'KEY', SECONDARY],
    ['9', 'FP_OUT_L', 'ac97-out-left', SECONDARY],
    ['10', 'FP_RETURN_L', 'ac97-return-left', SECONDARY],
  ],
});

follows('ac97-audio-2x5-dual-mode', {
  papers: 'a board product guide: presence on 4, ground on 6 and 10, nothing on 7',
  pitchMm: 2.54,
  pitchFrom: 'from memory',
  seen: ZIG_ZAG,
  rows: [
    ['1', 'MIC', 'ac97-mic', SOURCE],
    ['2', 'AUD_GND', 'ground', SOURCE],
    ['3', 'MIC_BIAS', 'ac97-mic-bias', SOURCE],
    ['4', 'PRESENCE#', 'hd-presence', SOURCE],
    ['5', 'FP_OUT_R', 'ac97-out-right', SOURCE],
    ['6', 'AUD_GND', 'ground', SOURCE],
    ['7', 'NC', 'no-connection', SOURCE],
    ['8', 'KEY', 'KEY', SOURCE],
    ['9', 'FP_OUT_L', 'ac97-out-left', SOURCE],
    ['10', 'AUD_GND', 'ground', SOURCE],
  ],
});
