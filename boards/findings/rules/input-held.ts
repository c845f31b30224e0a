import type { Circuit } from '../../circuit/circuit';
import { type MachineState, RESTING, RUNNING } from '../../circuit/machine-state';
import { inputVolts } from '../../circuit/readings/inputs';
import { levelOf } from '../../circuit/readings/level';
import { isSwitch, staysClosed } from '../../signals/part-traits';
import type { Job } from '../../signals/signal';
import { atPart, nodeOf, partOnPins } from '../about';
import type { FindingOf } from '../finding';
import { placementOf } from '../placement';
import { remediesForPart, remediesForStuck } from '../remedies';
import type { Rule } from '../rule';
import type { Leg, SeatedPart } from '../seated-part';
import { circuitWhenClosed } from '../when-closed';

/** The inputs that a person presses, and when each is listened to. */
const LISTENED: Readonly<Partial<Record<Job, MachineState>>> = {
  'power-switch': RESTING,
  'reset-switch': RUNNING,
  'case-open': RUNNING,
  'key-lock': RUNNING,
};

/**
 * Nothing but a pressed button may pull a switch input low: the board takes it for a stuck button.
 *
 * Good: a speaker between the speaker pins.
 * Bad: a speaker on the power switch pins: the machine would start by itself and go off after some seconds.
 * So would it with a power switch that is stuck, and with the switch of the lid there while the lid is off.
 */
export const inputHeld: Rule<'input-held'> = {
  id: 'input-held',
  source: 'ACPI 6.0, 4.8.2.2.1: power held for four seconds or more forces the machine off',
  explains: ['pair-split', 'wrong-pins', 'wrong-function', 'places-exchanged'],
  check: (context) =>
    context.parts.flatMap((part): readonly FindingOf<'input-held'>[] => {
      const stuck = part.part.condition === 'stuck';
      const opens = isSwitch(part.kind) && !stuck && !isHolding(part);
      const held = opens ? undefined : firstHeld(circuitWhenClosed(context, part), part);
      if (!held) return [];
      return [
        {
          code: 'input-held',
          severity: held.certain ? 'fault' : 'doubt',
          ...atPart(part),
          data: { ...partOnPins(part), ...held },
          remedies:
            stuck && placementOf(part) === 'right'
              ? remediesForStuck(context, part)
              : remediesForPart(context, part),
        },
      ];
    }),
};

/** The switch of a lid or a lock, anywhere but on its own pins. */
function isHolding(part: SeatedPart): boolean {
  return staysClosed(part.kind) && placementOf(part) !== 'right';
}

function firstHeld(circuit: Circuit, { legs }: SeatedPart) {
  for (const leg of legs) {
    const job = listenedJob(leg);
    const state = job && LISTENED[job];
    if (!job || !state) continue;
    const volts = inputVolts(circuit, [nodeOf(leg)], state);
    const level = levelOf(volts);
    if (volts && level !== 'high') return { job, volts, certain: level === 'low' };
  }
  return undefined;
}

function listenedJob({ signal }: Leg): Job | undefined {
  return signal.nature === 'input' ? signal.job : undefined;
}
