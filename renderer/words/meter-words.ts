import { percent } from '../../boards/base/percent';
import type { MeterQuestion, MeterRisk } from '../../boards/pinout/meter/identification';
import type { MeterState } from '../../boards/pinout/meter/words';

const NBSP = '\u00a0';

/** Said before a reading in the state that the machine is in already. */
export const STAYS: Readonly<Record<MeterState, string>> = {
  unplugged: 'The machine stays unplugged.',
  standby: 'The machine stays plugged in and off.',
  running: 'The machine stays on.',
};

/** What to mind at a reading, each time. */
export function minding(question: MeterQuestion): string {
  switch (question.kind) {
    case 'ohms':
    case 'continuity':
      return 'Mains plug out, supply switch off, every light on the board out.';
    case 'volts':
      return 'The board is live: one probe on bare metal of the case, the other on one pin, and do not slip.';
    case 'touch':
      return 'The board is live: join these two pins and no third, and do not slip.';
    case 'lamp':
      return 'The board is live: let the legs touch these two pins and nothing else.';
  }
}

/** Said to somebody about to take a reading of their own choice. */
export function ownRiskWords({ code, pin, chance }: MeterRisk): string {
  const where = `pin${NBSP}${pin}`;
  switch (code) {
    case 'may-be-supply':
      return `Do not join these: ${where} may be a supply (${percent(chance)}). Joined to another pin it could burn a trace.`;
    case 'may-not-be-touched':
      return `Do not join these: ${where} may be something that no switch of a case joins to ground (${percent(chance)}).`;
    case 'may-be-too-high':
      return `No LED tester here: ${where} may carry more than 6${NBSP}V (${percent(chance)}).`;
  }
}

/** What a person may have measured of their own choice. */
export const OWN_KINDS = [
  { id: 'ohms', label: 'ohms to ground, unplugged' },
  { id: 'volts-standby', label: 'volts in standby' },
  { id: 'volts-running', label: 'volts while it runs' },
  { id: 'continuity', label: 'continuity, unplugged' },
  { id: 'touch-standby', label: 'a brief touch in standby' },
  { id: 'touch-running', label: 'a brief touch while it runs' },
  { id: 'lamp-standby', label: 'LED tester in standby' },
  { id: 'lamp-running', label: 'LED tester while it runs' },
] as const;

export type OwnKind = (typeof OWN_KINDS)[number]['id'];
