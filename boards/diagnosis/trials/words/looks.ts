import { MAINS_OFF, type WordsById } from './phrases';

/** Looks and measurements: nothing is changed by them. */
export const LOOK_WORDS: WordsById = {
  'look-rear-switch': {
    title: 'Look at the rear of the supply',
    steps: [
      'Is its switch on, and is its mains selector, if it has one, set for your mains? Change a selector only with the mains plug pulled.',
    ],
  },
  'look-front-plugs': {
    title: 'Compare every front plug and fan plug with the board’s manual',
    steps: [MAINS_OFF, 'Look at each plug in a good light: right header, right pair, right way round?'],
  },
  'look-supply-plugs': {
    title: 'Look at every plug of the supply',
    steps: [
      MAINS_OFF,
      'Is each one on, home to its latch, the right way round, and of this very supply? Force none.',
    ],
  },
  'look-caps': {
    title: 'Compare the jumper caps with the board’s manual',
    steps: [
      MAINS_OFF,
      'Look at each cap: is it there, and in the place that the manual names for normal use?',
    ],
  },
  'look-board': {
    title: 'Look over the board in a good light',
    steps: [
      MAINS_OFF,
      'Are there burnt or brown places, swollen or leaking parts, scratches, bent pins in a socket, or loose metal?',
    ],
  },
  'look-under-board': {
    title: 'Look for metal under and on the board',
    steps: [
      MAINS_OFF,
      'Take the board out and look for loose screws and for standoffs where the board has no hole.',
    ],
  },
  'measure-power-button': {
    title: 'Measure the power button at its plug',
    steps: [
      MAINS_OFF,
      'Take its plug off the board and measure continuity between its two holes, first untouched, then pressed.',
    ],
  },
  'measure-reset-button': {
    title: 'Measure the reset button at its plug',
    steps: [
      MAINS_OFF,
      'Take its plug off the board and measure continuity between its two holes, first untouched, then pressed.',
    ],
  },
  'measure-standby': {
    title: 'Measure the standby voltage at the large supply plug',
    steps: [
      'Leave the plug on the board, mains on, machine off. Black probe to the metal of the case.',
      'Touch the purple wire from behind with the red probe: 4.75 V to 5.25 V is there, less is low. Let the probe touch nothing else, and never open the supply.',
    ],
  },
  'feel-buttons': {
    title: 'Press both buttons with mains off',
    steps: [
      MAINS_OFF,
      'Press each button of the front and let go. Does it click, come back by itself, and sit free in its hole?',
    ],
  },
  'look-processor-plug': {
    title: 'Look at the processor’s own supply plug',
    steps: [
      MAINS_OFF,
      'Find the four or eight pole socket near the processor. Is its plug in, home to the latch, with nothing in its way?',
    ],
    results: {
      'plug-off':
        'Without this plug fans run and nothing else happens: push it home, and never one that was made for a card.',
    },
  },
  'look-card-plug': {
    title: 'Look at the supply plug of the graphics card',
    steps: [MAINS_OFF, 'If the card has sockets for supply: is each one filled, and home to its latch?'],
  },
  'look-drive-plugs': {
    title: 'Look at both plugs of the drive',
    steps: [
      MAINS_OFF,
      'Is its supply plug in, not burnt and not forced the wrong way round? Is its data plug home at both ends?',
    ],
  },
  'look-case-open': {
    title: 'Look at the case-open pins',
    steps: [
      MAINS_OFF,
      'Has the board a case-open header: is the cap or the switch’s plug on it that the manual asks for?',
    ],
  },
  'look-cooler': {
    title: 'Look at the processor’s cooler',
    steps: [
      MAINS_OFF,
      'Does it sit flat and tight at every corner, does its fan turn freely, and was the film taken off its foot? Let it cool down before you touch it.',
    ],
  },
  'look-fans': {
    title: 'Follow the wires of every fan',
    steps: [
      MAINS_OFF,
      'Where does each end: header, splitter or hub? Has a hub its own supply, and does only one fan of a splitter tell its speed?',
    ],
  },
  'look-parts': {
    title: 'Look whether card and memory sit home',
    steps: [
      MAINS_OFF,
      'Touch bare metal first. Does every card, module and cooler sit straight, with its latches closed?',
    ],
  },
  'meter-header': {
    title: 'Measure the header pin by pin against its list',
    steps: [
      MAINS_OFF,
      'Measure each pin against ground as the page “From a meter” proposes, and compare the wires of the plug with what comes out.',
    ],
    results: {
      'list-wrong': 'The list and the header differ: go by what was measured, and ask the board’s maker.',
    },
  },
  'measure-cell': {
    title: 'Measure the coin cell',
    steps: [
      MAINS_OFF,
      'Volts between the top of the cell and ground. A new one has about 3 V; clearly below 2.5 V it is flat.',
    ],
    results: {
      there: 'The cell is good: it most likely has nothing to do with it.',
      low: 'The cell is flat: put a new one in. Some boards start without one all the same.',
    },
  },
  'supply-alone': {
    title: 'Let the supply start by itself',
    steps: [
      MAINS_OFF,
      'Take the large plug off the board and leave something small joined, as a fan. Join the wire of PS_ON# (pin 16 of 24) to the ground beside it with a bent paper clip.',
      'Put mains back: do its fan and the small load run? Pull the mains plug before you take the clip out. Never open the supply.',
    ],
    results: {
      starts: 'It starts. That does not prove that it carries the load of the board.',
      'stays-off': 'It does not start by itself either: mains, cable, switch or the supply.',
    },
  },
};
