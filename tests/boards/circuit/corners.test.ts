import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { circuitOf } from '../../../boards/circuit/circuit';
import { type Span, USUAL } from '../../../boards/circuit/corner';
import { partDeviceId } from '../../../boards/circuit/elements';
import { BUSY, type MachineState, RESTING, RUNNING } from '../../../boards/circuit/machine-state';
import { inputPins, inputVolts } from '../../../boards/circuit/readings/inputs';
import { lampsOf } from '../../../boards/circuit/readings/lamps';
import { type Solution, solve } from '../../../boards/circuit/solve';
import { type Build, BuildZ } from '../../../boards/document/build';
import type { Pin } from '../../../boards/document/connector';
import { PARAMETER_IDS, parameterAt } from '../../../boards/signals/parameters';
import { Dice } from '../dice';

/**
 * That the corners of the ranges bound what a board can do is no theorem. Boards drawn at random
 * from inside the ranges, every pin for itself, must not fall outside of what the corners say.
 */
const WIRED: Build = BuildZ.parse(
  JSON.parse(readFileSync(new URL('../../../boards/library/demo/wired.build.json', import.meta.url), 'utf8')),
);
const STATES: readonly MachineState[] = [
  RESTING,
  RUNNING,
  BUSY,
  { ...RESTING, held: ['power'] },
  { ...RUNNING, held: ['power', 'reset'] },
];
const SAMPLES = 150;
const STEPS = 1_000;
const ENDS = ['usual', 'strong', 'weak'] as const;

/** Every value behind a pin, each somewhere in its range. Ends are likely: that is where bounds would break. */
function drawn(pin: Pin, dice: Dice): Pin {
  const values = PARAMETER_IDS.map((parameter) => {
    const [one, other] = [parameterAt(parameter, 'strong'), parameterAt(parameter, 'weak')];
    const share = dice.oneIn(3) ? dice.below(2) : dice.below(STEPS + 1) / STEPS;
    return { parameter, value: one + (other - one) * share };
  });
  return { ...pin, values };
}

/** The demo on a board drawn at random, with each wire and part usual or at one of its ends, as a solved circuit. */
function drawnMachine(dice: Dice): (state: MachineState) => Solution {
  const connectors = WIRED.board.connectors.map((connector) => ({
    ...connector,
    pins: connector.pins.map((pin) => drawn(pin, dice)),
  }));
  const { elements } = circuitOf({ ...WIRED, board: { ...WIRED.board, connectors } });
  const ends = elements.map(() => dice.pick(ENDS) ?? 'usual');
  return (state) =>
    solve(elements.flatMap((one, i) => one.devices(state, { ...USUAL, lead: ends[i] ?? 'usual' })));
}

/** How far a value may lie outside by rounding alone. */
const ROUNDING = 1e-9;

function within(value: number, { low, high }: Span, what: string): void {
  expect(value, what).toBeGreaterThanOrEqual(low - ROUNDING - Math.abs(low) * ROUNDING);
  expect(value, what).toBeLessThanOrEqual(high + ROUNDING + Math.abs(high) * ROUNDING);
}

test('no board inside the ranges lights a lamp of the demo, or sets an input, outside of what the corners say', () => {
  const circuit = circuitOf(WIRED);
  const lamps = lampsOf(WIRED, circuit);
  const { power, reset } = inputPins(WIRED.board.connectors);
  const inputs = [...power, ...reset];
  expect([lamps.length, inputs.length]).toEqual([2, 2]);
  const dice = new Dice(20_261_125);
  for (let sample = 0; sample < SAMPLES; sample += 1) {
    const machine = drawnMachine(dice);
    for (const state of STATES) {
      const { amps, volts } = machine(state);
      for (const lamp of lamps) {
        const value = amps.get(partDeviceId(lamp.lead, lamp.part)) ?? Number.NaN;
        within(value, lamp.glow(state).amps, `${lamp.part} of ${lamp.lead}, sample ${sample}`);
      }
      for (const pin of inputs) {
        const span = inputVolts(circuit, [pin], state);
        if (!span) throw new Error(`Nothing touches ${pin}`);
        within(volts.get(pin) ?? Number.NaN, span, `${pin}, sample ${sample}`);
      }
    }
  }
});
