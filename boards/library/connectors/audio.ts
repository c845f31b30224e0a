import { openHeader } from '../connector-type';
import { zigZag } from '../grids';
import { keyAt, otherwise, pinsFrom } from '../pin-rows';
import { readAbout, readIn } from '../reading';

const GUIDE = 'Front Panel I/O Connectivity Design Guide v1.3 (2005)';
const HD = readIn('standard', `${GUIDE}, Figure 4`);
const AC97 = readIn('standard', `${GUIDE}, Table 6`);
const EARLY = readAbout('manual', 'AC’97 panel header of an early board manual, quoted by owners');
const DUAL = readIn('manual', 'a board product guide: audio header that takes either lead');

const hd = pinsFrom(HD);
const ac97 = pinsFrom(AC97);
const early = pinsFrom(EARLY);
const dual = pinsFrom(DUAL);

const HD_GROUND = { belongsTo: 'hd-audio' } as const;
const AC97_GROUND = { belongsTo: 'ac97-audio' } as const;

/** Pin 8 is the key of all four: shape does not tell them apart. */
export const AUDIO_CONNECTORS = [
  openHeader(
    'hd-audio-2x5',
    {
      title: 'HD audio',
      grid: zigZag(5),
      pins: [
        hd(1, 'hd-mic-left', 'PORT1 L'),
        hd(2, 'ground', 'GND', HD_GROUND),
        hd(3, 'hd-mic-right', 'PORT1 R'),
        hd(4, 'hd-presence', 'PRESENCE#'),
        hd(5, 'hd-phones-right', 'PORT2 R'),
        hd(6, 'hd-sense1-return', 'SENSE1_RETURN'),
        hd(7, 'hd-sense-send', 'SENSE_SEND'),
        keyAt(8, HD),
        hd(9, 'hd-phones-left', 'PORT2 L'),
        hd(10, 'hd-sense2-return', 'SENSE2_RETURN'),
      ],
    },
    [`pitch 100 mil: ${GUIDE}, Figure 4`],
  ),
  openHeader('ac97-audio-2x5', {
    title: 'AC’97 audio',
    grid: zigZag(5),
    pins: [
      ac97(1, 'ac97-mic', 'MIC'),
      ac97(2, 'ground', 'AUD_GND', AC97_GROUND),
      ac97(3, 'ac97-mic-bias', 'MIC_BIAS'),
      ac97(4, 'ground', 'AUD_GND', {
        ...AC97_GROUND,
        alternatives: [otherwise('ac97-supply', EARLY.source), otherwise('hd-presence', DUAL.source)],
      }),
      ac97(5, 'ac97-out-right', 'FP_OUT_R'),
      ac97(6, 'ac97-return-right', 'FP_RETURN_R'),
      ac97(7, 'ac97-supply', 'AUD_5V', {
        alternatives: [otherwise('ac97-phones-on', EARLY.source), otherwise('no-connection', DUAL.source)],
      }),
      keyAt(8, AC97),
      ac97(9, 'ac97-out-left', 'FP_OUT_L'),
      ac97(10, 'ac97-return-left', 'FP_RETURN_L'),
    ],
  }),
  openHeader('ac97-audio-2x5-early', {
    title: 'AC’97 audio, early order',
    grid: zigZag(5),
    pins: [
      early(1, 'ac97-mic', 'MIC'),
      early(2, 'ground', 'AUD_GND', AC97_GROUND),
      early(3, 'ac97-mic-bias', 'MIC_BIAS'),
      early(4, 'ac97-supply', 'AUD_VCC', {
        notes: 'An HD audio lead joins this pin to ground through about 1 kΩ.',
      }),
      early(5, 'ac97-out-right', 'FP_OUT_R'),
      early(6, 'ac97-return-right', 'FP_RETURN_R'),
      early(7, 'ac97-phones-on', 'HP_ON'),
      keyAt(8, EARLY),
      early(9, 'ac97-out-left', 'FP_OUT_L'),
      early(10, 'ac97-return-left', 'FP_RETURN_L'),
    ],
  }),
  openHeader('ac97-audio-2x5-dual-mode', {
    title: 'AC’97 audio on a header made for both',
    grid: zigZag(5),
    pins: [
      dual(1, 'ac97-mic', 'MIC'),
      dual(2, 'ground', 'AUD_GND', AC97_GROUND),
      dual(3, 'ac97-mic-bias', 'MIC_BIAS'),
      dual(4, 'hd-presence', 'PRESENCE#'),
      dual(5, 'ac97-out-right', 'FP_OUT_R'),
      dual(6, 'ground', 'AUD_GND', AC97_GROUND),
      dual(7, 'no-connection', 'NC', AC97_GROUND),
      keyAt(8, DUAL),
      dual(9, 'ac97-out-left', 'FP_OUT_L'),
      dual(10, 'ground', 'AUD_GND', AC97_GROUND),
    ],
  }),
];
