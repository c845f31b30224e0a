import { BOARD_FAULTS } from '../../../boards/diagnosis/faults/board-faults';
import type { Fault } from '../../../boards/diagnosis/faults/fault';
import { FRONT_FAULTS } from '../../../boards/diagnosis/faults/front-faults';
import { asBuilt } from '../../../boards/diagnosis/faults/own/own-faults';
import { SUPPLY_FAULTS } from '../../../boards/diagnosis/faults/supply-faults';
import type { ObservationId } from '../../../boards/diagnosis/observations/observations';
import { placeOf, predict } from '../../../boards/diagnosis/predict';
import type { Build } from '../../../boards/document/build';

export const ANY: readonly Fault[] = [...FRONT_FAULTS, ...SUPPLY_FAULTS, ...BOARD_FAULTS];

/** What a build has by name of a fault of any machine. */
export function casesOf(build: Build, caseOf: string): readonly Fault[] {
  return asBuilt(build, ANY).filter((fault) => fault.caseOf === caseOf);
}

/** What is left of a fault of any machine for what is not listed, in its own weight. */
export function unlistedOf(build: Build, id: string): number {
  const weight = (faults: readonly Fault[]) => faults.find((fault) => fault.id === id)?.weight ?? 0;
  return weight(asBuilt(build, ANY)) / weight(ANY);
}

/** A fault of a build by its id; fails when it has none. */
export function faultOf(build: Build, id: string): Fault {
  const own = asBuilt(build, ANY);
  const one = own.find((fault) => fault.id === id);
  if (!one) throw new Error(`No ${id} among ${own.map((fault) => fault.id).join(', ')}`);
  return one;
}

export function endsOf(fault: Fault): ReadonlySet<string> {
  return new Set(predict(fault).map(({ end }) => end));
}

/** The chance of a yes to an observation, over all ways in which a fault may go. */
export function chanceOfSeeing(fault: Fault, observation: ObservationId): number {
  return predict(fault).reduce((sum, each) => sum + each.chance * (each.yes[placeOf(observation)] ?? 0), 0);
}

export function sumOf(faults: readonly Fault[]): number {
  return faults.reduce((sum, { weight }) => sum + weight, 0);
}
