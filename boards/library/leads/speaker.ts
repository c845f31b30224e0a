import { singleRow } from '../grids';
import { type LeadType, leadType } from '../lead-type';
import { plug, wires } from '../plug-and-wires';

const TRADE = 'common practice, no source';
const FOUR_WIDE = 'four wide with the outer contacts in use: an owners’ forum; colours are common practice';

export const SPEAKER_LEADS: readonly LeadType[] = [
  leadType('speaker-1x4', 'speaker', FOUR_WIDE, {
    parts: [{ id: 'speaker', kind: 'speaker' }],
    plugs: [plug('plug', 'SPEAKER', singleRow(4))],
    wires: wires('speaker', 'plug', [
      ['plus', 1, 'red'],
      ['minus', 4, 'black'],
    ]),
  }),
  leadType('speaker-1x2', 'speaker, two wide', TRADE, {
    parts: [{ id: 'speaker', kind: 'speaker' }],
    plugs: [plug('plug', 'SPEAKER', singleRow(2))],
    wires: wires('speaker', 'plug', [
      ['plus', 1, 'red'],
      ['minus', 2, 'black'],
    ]),
  }),
  leadType('buzzer-1x4', 'buzzer on a four-wide plug', TRADE, {
    parts: [{ id: 'buzzer', kind: 'buzzer' }],
    plugs: [plug('plug', 'BUZZER', singleRow(4), { mark: '1' })],
    wires: wires('buzzer', 'plug', [
      ['plus', 1, 'red'],
      ['minus', 4, 'black'],
    ]),
  }),
  leadType('buzzer-1x2', 'buzzer on a two-wide plug', TRADE, {
    parts: [{ id: 'buzzer', kind: 'buzzer' }],
    plugs: [plug('plug', 'BUZZER', singleRow(2), { mark: '1' })],
    wires: wires('buzzer', 'plug', [
      ['plus', 1, 'red'],
      ['minus', 2, 'black'],
    ]),
  }),
];
