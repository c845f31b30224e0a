import { MAINS_OFF, START, type WordsById } from './phrases';

/** Something is changed, and the machine is started again. */
export const CHANGE_WORDS: WordsById = {
  'mains-off-a-minute': {
    title: 'Take mains off for a minute',
    steps: ['Pull the mains plug, press the power button once, and wait a full minute.', START],
  },
  'other-outlet': {
    title: 'Use another outlet and another mains cable',
    steps: ['Pull the mains plug. Take a cable and an outlet that run something else.', START],
  },
  'usb-devices-off': {
    title: 'Unplug every USB device, the keyboard too',
    steps: ['Leave only the screen joined.', START],
  },
  'bare-pins': {
    title: 'Take all front leads off and touch the two power pins',
    steps: [
      MAINS_OFF,
      'Note or photograph where each lead sat, then take all front leads off the board.',
      'Find the two power switch pins in the board’s manual. Put mains back and touch only these two, for a moment, with the tip of a screwdriver. No other pins.',
    ],
  },
  'exchange-buttons': {
    title: 'Exchange the plugs of power and reset',
    steps: [
      MAINS_OFF,
      'Put the reset button’s plug on the power pins and the power button’s plug on the reset pins.',
      'Put mains back and start with the reset button.',
    ],
  },
  'settings-cleared': {
    title: 'Clear the settings of the board',
    steps: [MAINS_OFF, 'Note the settings you need, then clear them as the board’s manual says.', START],
  },
  'new-cell': {
    title: 'Put a new coin cell in',
    steps: [MAINS_OFF, 'Change the cell for a new one of the same type, the same side up.', START],
  },
  'one-memory-module': {
    title: 'Try one memory module alone',
    steps: [
      MAINS_OFF,
      'Leave one module in the slot that the manual names first, pressed home at both ends; try each module in turn.',
      START,
    ],
  },
  'other-supply': {
    title: 'Try another supply that is known to be good',
    steps: [
      MAINS_OFF,
      'Use the other supply with its own cables only: a cable of another supply can destroy what it feeds.',
      START,
    ],
  },
  'out-of-case': {
    title: 'Try the board out of the case',
    steps: [
      MAINS_OFF,
      'Lay the board on dry cardboard with processor, cooler, one memory module and supply, and no front leads.',
      'Put mains back and touch the two power switch pins for a moment.',
    ],
  },
  'front-usb-off': {
    title: 'Take the front USB plugs off the board',
    steps: [MAINS_OFF, 'Note where each one sat and take off those of the front USB sockets alone.', START],
    results: {
      gone: 'The trouble is gone: it comes from the front sockets, their lead or its place. Leave it off until it was looked at.',
    },
  },
  'switch-turned': {
    title: 'Turn the plug of the switch round on its pins',
    steps: [
      MAINS_OFF,
      'Turn it at the end that tells plus from minus: on the board, behind a board between. A plain button does not mind.',
      START,
    ],
  },
  'light-turned': {
    title: 'Turn the plug of the light round on its pins',
    steps: [MAINS_OFF, 'The same two pins, the other way round. Nothing breaks by that.', START],
  },
  'board-between-out': {
    title: 'Take the board between panel and header out',
    steps: [
      MAINS_OFF,
      'Put the leads of the case straight on the header, as the board’s manual says.',
      START,
    ],
  },
  'usb-on-main-rail': {
    title: 'Put the cap for USB supply on +5 V instead of standby',
    steps: [MAINS_OFF, 'Find the cap beside the sockets in the board’s manual and move it.', START],
  },
  'fan-on-watched-header': {
    title: 'Put the processor’s fan on the header that the manual names for it',
    steps: [
      MAINS_OFF,
      'With a pump or a radiator: the lead that tells a speed. Never start without a fan on the cooler.',
      START,
    ],
  },
  'exchange-fans': {
    title: 'Exchange two fans on their headers',
    steps: [MAINS_OFF, 'Put this fan on the other one’s header, and the other one here.', START],
    results: {
      other: 'The trouble went along with the fan: the fan or its wires.',
      same: 'The trouble stayed at the header: the header, its setting, or what it is fed by.',
    },
  },
  'card-out': {
    title: 'Take the graphics card out',
    steps: [
      MAINS_OFF,
      'If the processor can show a picture itself: take the card out and put the screen on the board’s socket. Else try another card.',
      START,
    ],
  },
  'drives-off': {
    title: 'Take supply and data off every drive',
    steps: [MAINS_OFF, 'Take the plugs off at the drives. They need not run for the first picture.', START],
  },
  'other-data-port': {
    title: 'Put the drive on another data port',
    steps: [
      MAINS_OFF,
      'Look in the board’s manual which ports a slot in use switches off, and take another one.',
      START,
    ],
  },
  'other-data-cable': {
    title: 'Use another data cable',
    steps: [MAINS_OFF, 'Take a short one with latches, without sharp bends.', START],
    results: {
      gone: 'No new errors with this cable. Counts of errors never go down: watch whether they grow.',
    },
  },
  'other-system': {
    title: 'Start another system from a stick',
    steps: [
      'Start a system from a stick and see whether the trouble is there too. Nothing is written to the drives.',
    ],
  },
  'cooler-anew': {
    title: 'Seat the cooler anew',
    steps: [
      MAINS_OFF,
      'Let it cool down. Take it off straight, clean both faces, put fresh paste on and fasten it crosswise.',
      START,
    ],
  },
  'fewest-parts': {
    title: 'Try with the fewest parts',
    steps: [
      MAINS_OFF,
      'Leave board, processor with cooler, one memory module, supply and speaker. Take off all front leads, drives, cards and USB devices.',
      'Put mains back and touch the two power switch pins for a moment.',
    ],
    results: { gone: 'It starts: put back one part at a time, and write down what each does.' },
  },
  'other-memory': {
    title: 'Try other memory that is known to be good',
    steps: [MAINS_OFF, 'Use a kind that the board’s manual names, in the slot that it names first.', START],
  },
  'other-fan': {
    title: 'Try another fan on this header',
    steps: [MAINS_OFF, 'Use one of the same kind that is known to be good.', START],
  },
  'audio-lead-moved': {
    title: 'Lay the audio lead elsewhere',
    steps: [MAINS_OFF, 'Away from the graphics card, the fans and the supply, and not in a loop.', START],
  },
  'audio-kind-set': {
    title: 'Set the kind of front audio in the settings',
    steps: [
      'In the board’s settings or its audio program: the kind that is printed on the plug of the panel.',
      START,
    ],
  },
  'other-board': {
    title: 'Try another board',
    steps: [
      MAINS_OFF,
      'The last thing to do: another board with these parts, or these parts on a board that is known to be good.',
      START,
    ],
  },
};
