import type { PartKind, Terminal } from './part-kind';
import type { SignalId } from './signals';
import { terminal } from './terminal';

const TRADE = 'common practice, no source';
const PANEL = 'Front Panel I/O Connectivity Design Guide v1.3 (2005), 2.2.2';

function switchLegs(input: SignalId): readonly Terminal[] {
  return [terminal('a', 'first leg', input), terminal('b', 'second leg', 'ground')];
}

const LEGS = ['a', 'b'] as const;

/** Switches, lights, sounders, sensors and caps: parts with two legs. */
export const PANEL_PARTS = [
  {
    id: 'power-switch',
    name: 'power switch',
    job: 'power-switch',
    terminals: switchLegs('power-switch-input'),
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'closes-when-pressed',
    source: PANEL,
  },
  {
    id: 'reset-switch',
    name: 'reset switch',
    job: 'reset-switch',
    terminals: switchLegs('reset-switch-input'),
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'closes-when-pressed',
    source: PANEL,
  },
  {
    id: 'electronic-power-switch',
    name: 'electronic power switch',
    job: 'power-switch',
    terminals: switchLegs('power-switch-input'),
    reversed: 'dead',
    path: 'one-way',
    source: TRADE,
  },
  {
    id: 'power-led',
    name: 'power LED',
    job: 'power-led',
    reversed: 'dark',
    path: 'one-way',
    source: PANEL,
    terminals: [
      terminal('anode', '+', 'power-led-feed'),
      terminal('cathode', '−', 'power-led-sink', 'ground'),
    ],
  },
  {
    id: 'two-colour-power-led',
    name: 'two-colour power LED',
    job: 'power-led',
    reversed: 'other-colour',
    path: 'one-way',
    source: PANEL,
    terminals: [
      terminal('first', 'first colour', 'power-led-feed'),
      terminal('second', 'second colour', 'power-led-sink', 'ground'),
    ],
  },
  {
    id: 'drive-led',
    name: 'drive LED',
    job: 'drive-led',
    reversed: 'dark',
    path: 'one-way',
    source: PANEL,
    terminals: [terminal('anode', '+', 'drive-led-feed'), terminal('cathode', '−', 'drive-led-sink')],
  },
  {
    id: 'message-led',
    name: 'message LED',
    job: 'message-led',
    reversed: 'dark',
    path: 'one-way',
    source: TRADE,
    terminals: [
      terminal('anode', '+', 'message-led-feed'),
      terminal('cathode', '−', 'message-led-sink', 'ground'),
    ],
  },
  {
    id: 'speaker',
    name: 'speaker',
    job: 'speaker',
    exchangeable: ['plus', 'minus'],
    reversed: 'nothing',
    path: 'low-resistance',
    source: TRADE,
    terminals: [terminal('plus', '+', 'speaker-feed', 'supply-5v'), terminal('minus', '−', 'speaker-drive')],
  },
  {
    id: 'buzzer',
    name: 'buzzer',
    job: 'speaker',
    reversed: 'dead',
    path: 'load',
    source: TRADE,
    terminals: [terminal('plus', '+', 'speaker-feed', 'supply-5v'), terminal('minus', '−', 'speaker-drive')],
  },
  {
    id: 'case-open-switch',
    name: 'case-open switch',
    job: 'case-open',
    terminals: switchLegs('case-open-input'),
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'closes-when-pressed',
    source: 'board product guides',
  },
  {
    id: 'key-lock',
    name: 'key lock',
    job: 'key-lock',
    terminals: switchLegs('key-lock-input'),
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'closes-when-pressed',
    source: TRADE,
  },
  {
    id: 'sensor',
    name: 'temperature sensor',
    job: 'sensor',
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'load',
    terminals: [terminal('a', 'first leg', 'sensor-input'), terminal('b', 'second leg', 'ground')],
    source: TRADE,
  },
  {
    id: 'jumper-cap',
    name: 'jumper cap',
    job: 'clear-settings',
    exchangeable: LEGS,
    reversed: 'nothing',
    path: 'low-resistance',
    source: TRADE,
    terminals: [terminal('a', 'first side'), terminal('b', 'second side')],
  },
] as const satisfies readonly PartKind[];
