import type { Identification, MeterQuestion, MeterRisk } from '../meter/identification';
import { riskOf } from '../meter/risks';
import { chancesByKind, postsByLabel } from './chances-by-kind';

/** Why a reading of the person's own choice must not be taken, as far as the readings so far tell. */
export function ownRisk(question: MeterQuestion, found: Identification): MeterRisk | undefined {
  return riskOf(question, chancesByKind(found), postsByLabel(found));
}
