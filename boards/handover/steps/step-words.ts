import type { Build } from '../../document/build';
import { pinsUnderSeat } from '../../findings/about';
import { capital, pinsOf, plugText } from '../../findings/words/names';
import { meterTitle, otherwiseWords, readingWords } from '../meter/meter-words';
import { type BenchStep, type Chore, wiresOf } from './bench-steps';

const NBSP = '\u00a0';

/** A step as it is read at the bench: what to do, and line by line how. */
export interface StepWords {
  readonly title: string;
  readonly lines: readonly string[];
}

/** The words of a step. The manual of the board and of the case has the last word in each. */
export function stepWords(build: Build, step: BenchStep): StepWords {
  switch (step.kind) {
    case 'chore':
      return CHORE_WORDS[step.chore];
    case 'meter':
      return {
        title: meterTitle(build, step.step),
        lines: step.step.readings.flatMap((reading) => [
          readingWords(build, reading),
          ...otherwiseWords(reading),
        ]),
      };
    case 'plug':
      return plugWords(build, step);
  }
}

function plugWords(build: Build, { seated }: Extract<BenchStep, { kind: 'plug' }>): StepWords {
  const { seat, lead, plug } = seated;
  const name = capital(plugText(build, { lead: lead.id, plug: plug.id }));
  const marked = wiresOf(seated).find(({ hole }) => hole === plug.mark);
  return {
    title: `${name} on ${pinsOf(build, pinsUnderSeat(build, seat))}`,
    lines: [
      ...wiresOf(seated).map(({ wire, pin }) => {
        const colour = wire.stripe ? `${wire.colour} with a ${wire.stripe} stripe` : wire.colour;
        return pin
          ? `${capital(colour)} wire to pin${NBSP}${pin.pin}.`
          : `${capital(colour)} wire over no pin.`;
      }),
      ...(marked?.pin ? [`The mark on the plug is at pin${NBSP}${marked.pin.pin}.`] : []),
    ],
  };
}

const CHORE_WORDS: Readonly<Record<Chore, StepWords>> = {
  'make-safe': {
    title: 'Make it safe',
    lines: [
      'Pull the mains plug and put the supply’s switch to off.',
      'Wait, and discharge yourself on bare metal of the case.',
      'Never open the power supply.',
    ],
  },
  'io-plate': {
    title: 'Put the I/O plate into the case',
    lines: ['It snaps in from inside. No spring of it may lie in a socket later.'],
  },
  standoffs: {
    title: 'Set the standoffs',
    lines: ['One under every hole of the board, none where the board has no hole: it would short the board.'],
  },
  processor: { title: 'Put the processor in', lines: ['By its corner mark, without force.'] },
  memory: {
    title: 'Put the memory in',
    lines: ['In the places that the board’s manual names first, until both ends latch.'],
  },
  'm2-drive': { title: 'Fix the M.2 drive', lines: ['Before a card or a heatsink covers its place.'] },
  cooler: { title: 'Fit the cooler', lines: ['Film off its base, paste between, screws crosswise.'] },
  'feed-cpu-lead': {
    title: 'Feed the lead of the CPU supply through',
    lines: ['Through the opening beside its socket, before the board hides it.'],
  },
  'board-in': {
    title: 'Put the board in',
    lines: ['No lead may lie under it. Every screw first loosely, then tight.'],
  },
  'graphics-card': {
    title: 'Put the graphics card in',
    lines: ['It covers the headers below: look at every lead there once more first.'],
  },
  'look-over': {
    title: 'Look over everything',
    lines: [
      'Every plug as on the sheet, every lead clear of the fans, no loose screw.',
      'Only then the mains plug. Stop at smell, smoke or heat.',
    ],
  },
};
