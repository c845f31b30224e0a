import type { Connector, Pin } from '../../document/connector';
import type { SignalId } from '../../signals/signals';
import type { Circuit } from '../circuit';
import { type Span, spanOf } from '../corner';
import { pinNode } from '../elements';
import type { Button, MachineState, SupplyState } from '../machine-state';
import { type Level, levelOf } from './level';

/** A board has at most a few pins for one input; the machine obeys any of them. */
export interface InputPins {
  readonly power: readonly string[];
  readonly reset: readonly string[];
}

const INPUT_OF: Readonly<Record<Button, SignalId>> = {
  power: 'power-switch-input',
  reset: 'reset-switch-input',
};

function pinsWith(connectors: readonly Connector[], signal: SignalId): readonly string[] {
  return connectors.flatMap((connector) =>
    connector.pins
      .filter((pin: Pin) => pin.signal === signal && !pin.missing)
      .map((pin) => pinNode(connector.id, pin.pin)),
  );
}

export function inputPins(connectors: readonly Connector[]): InputPins {
  return { power: pinsWith(connectors, INPUT_OF.power), reset: pinsWith(connectors, INPUT_OF.reset) };
}

/** The voltage at an input over the ranges: the lowest of its pins; undefined where nothing touches it. */
export function inputVolts(circuit: Circuit, pins: readonly string[], state: MachineState): Span | undefined {
  const touched = pins.filter((pin) => circuit.elements.some(({ id }) => id === pin));
  if (touched.length === 0) return undefined;
  return spanOf((corner) =>
    Math.min(...touched.map((pin) => circuit.volts(pin, state, corner) ?? Number.POSITIVE_INFINITY)),
  );
}

/** What the two inputs of a board read in a state. */
export function inputLevels(
  circuit: Circuit,
  pins: InputPins,
  state: MachineState,
): Readonly<Record<Button, Level>> {
  return {
    power: levelOf(inputVolts(circuit, pins.power, state)),
    reset: levelOf(inputVolts(circuit, pins.reset, state)),
  };
}

/** What holding nothing, or one button, would do, each as certain as the ranges allow. */
export interface ButtonStory {
  /** Power input low with nothing held: starts by itself, and goes off again when the override time is up. */
  readonly startsByItself: Level;
  /** Reset input low with nothing held: held in reset for ever. */
  readonly heldInReset: Level;
  readonly powerButtonStarts: Level;
  readonly resetButtonStarts: Level;
  readonly resetButtonResets: Level;
  readonly powerButtonResets: Level;
}

/** Asks the inputs in each state. "low" means it happens on any board, "high" that it does not on any. */
export function buttonStory(circuit: Circuit, connectors: readonly Connector[]): ButtonStory {
  const pins = inputPins(connectors);
  const at = (supply: SupplyState, held: readonly Button[]) =>
    inputLevels(circuit, pins, { supply, held, drive: 'idle', attached: false });
  return {
    startsByItself: at('standby', []).power,
    heldInReset: at('running', []).reset,
    powerButtonStarts: at('standby', ['power']).power,
    resetButtonStarts: at('standby', ['reset']).power,
    resetButtonResets: at('running', ['reset']).reset,
    powerButtonResets: at('running', ['power']).reset,
  };
}
