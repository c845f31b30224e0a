import type { Job } from '../signals/signal';
import type { Connector } from './connector';

/** The shape of what is no plug at all: wires that are soldered in, and stay. */
export const SOLDERED = 'soldered';

/** What a device takes power for at a connector of that shape. */
const JOB_OF_FAMILY: Readonly<Record<string, Job>> = {
  'main-power': 'main-power',
  'cpu-power': 'cpu-power',
  'card-power': 'card-power',
  'sata-power': 'drive-power',
  'peripheral-power': 'drive-power',
};

const POWER_JOBS: readonly Job[] = ['main-power', 'cpu-power', 'card-power', 'drive-power'];

/**
 * What a connector takes power from the supply unit for: by its shape, or where that is another, by what its
 * pins are there for. Undefined for one that power only comes from, or none.
 */
export function powerJobOf({ family, pins }: Pick<Connector, 'family' | 'pins'>): Job | undefined {
  const byShape = JOB_OF_FAMILY[family];
  if (byShape !== undefined) return byShape;
  const pin = pins.find(({ belongsTo }) => belongsTo !== undefined && POWER_JOBS.includes(belongsTo));
  return pin?.belongsTo;
}
