import { capital } from '../../base/capital';
import type { Build } from '../../document/build';
import type { Wire } from '../../document/lead';
import { pinsUnderSeat } from '../../findings/about';
import { pinsOf, plugText } from '../../findings/words/names';
import { landingsOf } from '../../fit/landing';
import type { SeatedPlug } from '../../fit/seated-plug';
import { meterTitle, otherwiseWords, readingWords } from '../meter/meter-words';
import { type BenchStep, type Chore, wiresOf } from './bench-steps';
import { fanLines } from './fan-lines';
import { standoffCautions, standoffLines } from './standoff-lines';

const NBSP = '\u00a0';

/** A step as it is read at the bench: what to do, line by line how, and what to mind before. */
export interface StepWords {
  readonly title: string;
  readonly lines: readonly string[];
  readonly cautions: readonly string[];
}

/** The words of a step. The manual of the board and of the case has the last word in each. */
export function stepWords(build: Build, step: BenchStep): StepWords {
  switch (step.kind) {
    case 'chore':
      return step.chore === 'fans'
        ? { ...FAN_WORDS, lines: fanLines(build.case.tray) }
        : { cautions: [], ...CHORE_WORDS[step.chore] };
    case 'standoffs':
      return {
        title: CHORE_WORDS.standoffs.title,
        lines: standoffLines(build, step.known),
        cautions: standoffCautions(build, step.known),
      };
    case 'meter':
      return {
        title: meterTitle(build, step.step),
        lines: [
          METER_HOW,
          ...step.step.readings.flatMap((reading) => [
            readingWords(build, reading),
            ...otherwiseWords(reading),
          ]),
        ],
        cautions: METER_CAUTIONS[step.step.kind === 'supply' ? 'supply' : 'part'],
      };
    case 'plug':
      return plugWords(build, step.seated);
  }
}

function plugWords(build: Build, seated: SeatedPlug): StepWords {
  const { seat, lead, plug } = seated;
  const name = capital(plugText(build, { lead: lead.id, plug: plug.id }));
  return {
    title: `${name} on ${pinsOf(build, pinsUnderSeat(build, seat))}`,
    lines: [
      ...wiresOf(seated).map(({ wire, pin }) => {
        const colour = capital(colourWords(wire));
        return pin ? `${colour} wire to pin${NBSP}${pin.pin}.` : `${colour} wire over no pin.`;
      }),
      ...lyingLines(seated),
    ],
    cautions: ['Only with light pressure: if it does not go on by itself, look again. Pins bend.'],
  };
}

/** How the plug is told to lie right: by its mark, by the hole that is stopped, by what hangs over. */
export function lyingLines(seated: SeatedPlug): readonly string[] {
  const { plug } = seated;
  const landings = landingsOf(seated);
  const marked = landings.find(({ hole }) => hole === plug.mark)?.pin;
  const stopped = landings.filter(({ state, pin }) => state === 'blocked' && pin?.missing === true);
  const over = landings.filter(({ pin }) => pin === undefined).length;
  return [
    ...(marked ? [`The mark on the plug is at pin${NBSP}${marked.pin}.`] : []),
    ...stopped.map(
      ({ hole, pin }) => `The stopped hole${NBSP}${hole} goes over place${NBSP}${pin?.pin}, where no pin is.`,
    ),
    ...(over > 0
      ? [`${over === 1 ? 'One hole hangs' : `${over} holes hang`} over the edge of the header.`]
      : []),
  ];
}

/** "red", "white with a blue stripe". */
function colourWords({ colour, stripe }: Pick<Wire, 'colour' | 'stripe'>): string {
  return stripe ? `${colour} with a ${stripe} stripe` : colour;
}

/** Common practice, no source. */
export const METER_HOW = 'The plugs stay on: touch each contact from behind, where its wire goes in.';

const METER_CAUTIONS = {
  part: ['Only unplugged: never measure ohms or diodes on a live circuit.'],
  supply: [
    'Only unplugged: never measure ohms or diodes on a live circuit.',
    'The reading may climb while the board charges up: wait until it stands still.',
  ],
} as const;

const FAN_WORDS = { title: 'See which way the fans blow', cautions: [] } as const;

/** Common practice, no source. */
const CHORE_WORDS: Readonly<
  Record<Exclude<Chore, 'fans'>, Omit<StepWords, 'cautions'> & Partial<Pick<StepWords, 'cautions'>>>
> = {
  'make-safe': {
    title: 'Make it safe',
    lines: [
      'Pull the mains plug and put the supply’s switch to off.',
      'Wait, and discharge yourself on bare metal of the case.',
    ],
    cautions: ['Never open the power supply: it holds mains voltage, also after unplugging.'],
  },
  'io-plate': {
    title: 'Put the I/O plate into the case',
    lines: ['It snaps in from inside. No spring of it may lie in a socket later.'],
  },
  standoffs: {
    title: 'Set the standoffs',
    lines: ['One under every hole of the board, none where the board has no hole: it would short the board.'],
  },
  processor: {
    title: 'Put the processor in',
    lines: ['By its corner mark, without force. Then close the lever or frame of its socket.'],
    cautions: ['Touch neither the contacts of the processor nor those of its socket.'],
  },
  memory: {
    title: 'Put the memory in',
    lines: ['In the places that the board’s manual names first, until both ends latch.'],
  },
  'm2-drive': { title: 'Fix the M.2 drive', lines: ['Before a card or a heatsink covers its place.'] },
  cooler: {
    title: 'Fit the cooler',
    lines: ['Film off its base, paste between, screws crosswise a few turns at a time.'],
  },
  'feed-cpu-lead': {
    title: 'Feed the lead of the CPU supply through',
    lines: ['Through the opening beside its socket, before the board hides it.'],
  },
  'board-in': {
    title: 'Put the board in',
    lines: ['No lead may lie under it. Every screw first loosely, then tight.'],
    cautions: ['Hold the board by its edges.'],
  },
  'supply-leads': {
    title: 'Plug in the leads of the supply',
    lines: [
      'The wide one for the board, the one for the processor, those for drives and cards, until they latch.',
      'The supply stays without mains.',
    ],
    cautions: ['The leads of another supply may be wired otherwise, also where they fit: use its own only.'],
  },
  'graphics-card': {
    title: 'Put the graphics card in',
    lines: ['It covers the headers below: look at every lead there once more first.'],
  },
  'look-over': {
    title: 'Look over everything',
    lines: [
      'Every plug as on the sheet, every lead clear of the fans, no loose screw.',
      'Only then the mains plug and the supply’s switch.',
    ],
    cautions: ['Stop at smell, smoke or heat: pull the mains plug, and do not try the same again.'],
  },
};
