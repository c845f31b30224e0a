import type { MeterQuestion } from '../meter/identification';

/** The pins of a reading that could be taken, in the order that counts. */
export function pinsAsked(question: MeterQuestion): readonly string[] {
  switch (question.kind) {
    case 'ohms':
    case 'volts':
      return [question.pin];
    case 'continuity':
    case 'touch':
      return question.pins;
    case 'lamp':
      return [question.plus, question.minus];
  }
}
