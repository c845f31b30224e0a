import type { PinRef } from '../../document/lookup';
import type { Circuit } from '../circuit';
import type { Span } from '../corner';
import { GROUND } from '../device';
import { pinNode } from '../elements';
import { RUNNING } from '../machine-state';
import { type Level, levelOf } from './level';
import { voltsBetween } from './volts-between';

/** What the board reads at its presence pin while it starts; low means that an HD audio panel is there. */
export interface Presence {
  readonly volts: Span;
  readonly level: Level;
}

/**
 * The presence pin over the ranges: 1 kΩ of a panel against 10 kΩ of the board makes it low, a ground wire
 * too (Front Panel I/O Connectivity Design Guide v1.3, 2.3.5). Undefined where nothing touches the pin:
 * then its own pull-up holds it high.
 */
export function presenceAt(circuit: Circuit, { connector, pin }: PinRef): Presence | undefined {
  const volts = voltsBetween(circuit, pinNode(connector, pin), GROUND, RUNNING);
  return volts && { volts, level: levelOf(volts) };
}
