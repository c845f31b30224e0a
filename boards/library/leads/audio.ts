import { singleRow, zigZag } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug, wires } from '../plug-and-wires';

const GUIDE = 'Front Panel I/O Connectivity Design Guide v1.3 (2005)';
const HD = `order: ${GUIDE}, Figure 4; colours are common practice`;
const AC97 = `order: ${GUIDE}, Table 6; colours are common practice`;
const TRADE = 'common practice, no source; the names on the plugs differ from case to case';

const KEYED = { blocked: ['8'], mark: '1' };

/** Single plugs for the two microphone lines and their ground, the same in both kinds of singles. */
const MIC_SINGLES = {
  plugs: [
    plug('mic', 'MIC IN', singleRow(1)),
    plug('bias', 'MIC BIAS', singleRow(1)),
    plug('ground', 'GND', singleRow(1)),
  ],
  wires: [
    ...wires('jacks', 'mic', [['mic', 1, 'red']]),
    ...wires('jacks', 'bias', [['mic-bias', 1, 'orange']]),
    ...wires('jacks', 'ground', [['ground', 1, 'black']]),
  ],
};

export const AUDIO_LEADS: readonly LeadType[] = [
  leadType('hd-audio-block-2x5', 'HD audio, hole 8 blocked', HD, {
    parts: [{ id: 'jacks', kind: 'hd-audio' }],
    plugs: [plug('plug', 'HD AUDIO', zigZag(5), KEYED)],
    wires: wires('jacks', 'plug', [
      ['mic-left', 1, 'red'],
      ['ground', 2, 'black'],
      ['mic-right', 3, 'pink'],
      ['presence', 4, 'brown'],
      ['phones-right', 5, 'green'],
      ['sense1-return', 6, 'violet'],
      ['sense-send', 7, 'blue'],
      ['phones-left', 9, 'white'],
      ['sense2-return', 10, 'grey'],
    ]),
  }),
  leadType('ac97-audio-block-2x5', 'AC’97 audio, hole 8 blocked', AC97, {
    parts: [{ id: 'jacks', kind: 'ac97-audio' }],
    plugs: [plug('plug', 'AC97', zigZag(5), KEYED)],
    wires: wires('jacks', 'plug', [
      ['mic', 1, 'red'],
      ['ground', 2, 'black'],
      ['mic-bias', 3, 'orange'],
      ['ground', 4, 'black'],
      ['out-right', 5, 'green'],
      ['return-right', 6, 'green', 'white'],
      ['out-left', 9, 'white'],
      ['return-left', 10, 'white', 'green'],
    ]),
    notes: 'A passive lead: hole 7, the supply of an amplifier in the panel, is empty.',
  }),
  leadType('audio-singles', 'AC’97 audio, single plugs', TRADE, {
    parts: [{ id: 'jacks', kind: 'ac97-audio' }],
    plugs: [
      ...MIC_SINGLES.plugs,
      plug('right', 'R OUT', singleRow(1)),
      plug('right-return', 'R RET', singleRow(1)),
      plug('left', 'L OUT', singleRow(1)),
      plug('left-return', 'L RET', singleRow(1)),
    ],
    wires: [
      ...MIC_SINGLES.wires,
      ...wires('jacks', 'right', [['out-right', 1, 'green']]),
      ...wires('jacks', 'right-return', [['return-right', 1, 'green', 'white']]),
      ...wires('jacks', 'left', [['out-left', 1, 'white']]),
      ...wires('jacks', 'left-return', [['return-left', 1, 'white', 'green']]),
    ],
  }),
  leadType('audio-singles-bridged', 'AC’97 audio, single plugs, outputs bridged to their returns', TRADE, {
    parts: [{ id: 'jacks', kind: 'ac97-audio' }],
    plugs: [...MIC_SINGLES.plugs, plug('right', 'EAR R', singleRow(2)), plug('left', 'EAR L', singleRow(2))],
    wires: [
      ...MIC_SINGLES.wires,
      ...wires('jacks', 'right', [
        ['out-right', 1, 'green'],
        ['out-right', 2, 'green'],
      ]),
      ...wires('jacks', 'left', [
        ['out-left', 1, 'white'],
        ['out-left', 2, 'white'],
      ]),
    ],
    notes: 'Each two-way plug joins an output pin with the return pin beside it.',
  }),
];
