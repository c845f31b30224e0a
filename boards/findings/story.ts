import { circuitOf } from '../circuit/circuit';
import type { Span } from '../circuit/corner';
import type { Button, MachineState } from '../circuit/machine-state';
import { inputPins, inputVolts } from '../circuit/readings/inputs';
import { type Level, levelOf } from '../circuit/readings/level';
import type { Build } from '../document/build';

/** What the machine would do in a state. Closed: every one has words in words/story.ts. */
export type StoryCode =
  | 'unplugged'
  | 'waits'
  | 'starts'
  | 'starts-by-reset'
  | 'starts-by-itself'
  | 'press-does-nothing'
  | 'sleeps'
  | 'wakes'
  | 'wakes-by-reset'
  | 'wakes-by-itself'
  | 'runs'
  | 'held-in-reset'
  | 'restarts'
  | 'restarts-by-power'
  | 'goes-off'
  | 'goes-off-by-reset'
  | 'goes-off-by-itself'
  | 'running-press-does-nothing';

/** What would happen, and how sure that is over the usual boards. */
export interface Story {
  readonly code: StoryCode;
  /** False where some boards would do it and others not. */
  readonly certain: boolean;
  readonly held: readonly Button[];
  /** The two inputs; undefined where no seated plug touches one, so that its own pull-up holds it high. */
  readonly volts: Readonly<Record<Button, Span | undefined>>;
}

/** Reads the two inputs in a state and tells what the board would do about them. */
export function storyOf(build: Build, state: MachineState): Story {
  const circuit = circuitOf(build);
  const pins = inputPins(build.board.connectors);
  const volts = {
    power: inputVolts(circuit, pins.power, state),
    reset: inputVolts(circuit, pins.reset, state),
  };
  const levels = { power: levelOf(volts.power), reset: levelOf(volts.reset) };
  return { ...happens(state, levels), held: state.held, volts };
}

type Levels = Readonly<Record<Button, Level>>;
type Happening = Pick<Story, 'code' | 'certain'>;

function happens(state: MachineState, levels: Levels): Happening {
  switch (state.supply) {
    case 'unplugged':
      return { code: 'unplugged', certain: true };
    case 'standby':
      return standing(state.held, levels.power);
    case 'asleep':
      return sleeping(state.held, levels.power);
    case 'running':
      return running(state.held, levels);
  }
}

function standing(held: readonly Button[], power: Level): Happening {
  if (power === 'high') return { code: held.length === 0 ? 'waits' : 'press-does-nothing', certain: true };
  const certain = power === 'low';
  if (held.includes('power')) return { code: 'starts', certain };
  return { code: held.includes('reset') ? 'starts-by-reset' : 'starts-by-itself', certain };
}

/** Asleep the power button wakes: the same input is asked, and something else comes of it. */
function sleeping(held: readonly Button[], power: Level): Happening {
  if (power === 'high') return { code: held.length === 0 ? 'sleeps' : 'press-does-nothing', certain: true };
  const certain = power === 'low';
  if (held.includes('power')) return { code: 'wakes', certain };
  return { code: held.includes('reset') ? 'wakes-by-reset' : 'wakes-by-itself', certain };
}

/** Reset wins: a machine held in reset runs nothing that could listen to the power button but its override. */
function running(held: readonly Button[], { power, reset }: Levels): Happening {
  if (reset !== 'high') {
    const certain = reset === 'low';
    if (held.includes('reset')) return { code: 'restarts', certain };
    return { code: held.includes('power') ? 'restarts-by-power' : 'held-in-reset', certain };
  }
  if (power !== 'high') {
    const certain = power === 'low';
    if (held.includes('power')) return { code: 'goes-off', certain };
    return { code: held.includes('reset') ? 'goes-off-by-reset' : 'goes-off-by-itself', certain };
  }
  return { code: held.length === 0 ? 'runs' : 'running-press-does-nothing', certain: true };
}
