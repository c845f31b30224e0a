import { never } from '../base/never';
import type { ParameterId } from './parameters';
import { RAILS, type StubElement } from './stub';
import { type StubbedPin, stubOf } from './stub-of';

/** What a sheet may state of the board behind a pin, each once, in the order of its stub. */
export function stubParameters(pin: StubbedPin): readonly ParameterId[] {
  return [...new Set(stubOf(pin).flatMap(parametersIn))];
}

function parametersIn(element: StubElement): readonly ParameterId[] {
  switch (element.kind) {
    case 'rail':
      return [element.ohms, ...railVolts(element.rail)];
    case 'fused-rail':
      return [element.coldOhms, element.tripAmps, element.trippedOhms, ...railVolts(element.rail)];
    case 'ground':
    case 'pulls-low':
      return [element.ohms];
    default:
      return never(element);
  }
}

function railVolts(rail: (typeof RAILS)[number]['id']): readonly ParameterId[] {
  return RAILS.filter(({ id }) => id === rail).map(({ volts }) => volts);
}
