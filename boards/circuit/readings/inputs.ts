import type { Volts } from '../../base/units';
import type { Connector, Pin } from '../../document/connector';
import type { SignalId } from '../../signals/signals';
import type { Circuit } from '../circuit';
import { CORNERS, type Span, spanOfValues } from '../corner';
import { pinNode } from '../elements';
import type { Button, MachineState } from '../machine-state';

/** A board has at most a few pins for one input; the machine obeys any of them. */
interface InputPins {
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
  const volts = inputVoltsAtCorners(circuit, pins, state);
  return volts && spanOfValues(volts);
}

/** The same for each corner, in the order of `CORNERS`. */
export function inputVoltsAtCorners(
  circuit: Circuit,
  pins: readonly string[],
  state: MachineState,
): readonly Volts[] | undefined {
  const touched = pins.filter((pin) => circuit.element(pin));
  if (touched.length === 0) return undefined;
  return CORNERS.map((corner) =>
    Math.min(...touched.map((pin) => circuit.volts(pin, state, corner) ?? Number.POSITIVE_INFINITY)),
  );
}
