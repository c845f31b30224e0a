import type { Connector } from '../../document/connector';
import type { PinReading } from '../../document/pin-reading';
import type { MeterQuestion, NextReading } from '../meter/identification';
import { identifyPins } from '../meter/identify';

/** So often is a skipped reading taken as asked before: each time halves what it is still worth. */
const TIMES = 12;

/**
 * The next reading beside those that the person skipped: each counts as taken often, with an answer that
 * tells nothing. Undefined when nothing else is worth a reading.
 */
export function nextBeside(connector: Connector, skipped: readonly MeterQuestion[]): NextReading | undefined {
  const { readings = [] } = connector;
  const taken = skipped.flatMap((question) => Array.from({ length: TIMES }, () => sayingNothing(question)));
  // Before the others: the last reading tells in which state the machine is.
  const found = identifyPins({ ...connector, readings: [...taken, ...readings] });
  return found.ok ? found.value.next : undefined;
}

/** A reading that was surely misread. */
function sayingNothing(question: MeterQuestion): PinReading {
  const doubt = 1;
  switch (question.kind) {
    case 'ohms':
      return { ...question, ohms: 'open', doubt };
    case 'volts':
      return { ...question, volts: 0, doubt };
    case 'continuity':
      return { kind: 'continuity', pins: [...question.pins], joined: false, doubt };
    case 'touch':
      return { ...question, pins: [...question.pins], did: 'nothing', doubt };
    case 'lamp':
      return { ...question, showed: 'dark', doubt };
  }
}
