import type { Fitted } from '../../boards/document/fitted';

/** What the machine may have, as it stands beside its tick. */
export const FITTED_WORDS: Readonly<Record<Fitted, string>> = {
  'io-plate': 'I/O plate',
  standoffs: 'Standoffs to be set',
  processor: 'Processor to be put in',
  memory: 'Memory',
  cooler: 'Cooler',
  'cooler-over-memory': 'Cooler reaches over the memory',
  'm2-drive': 'M.2 drive',
  'graphics-card': 'Graphics card',
};
