import type { Volts } from '../base/units';

/** What a pin is to the circuit, before any value is known. */
type SignalNature =
  | 'ground'
  | 'supply' // a rail: gives amps until something trips or melts
  | 'feed' // a rail behind a resistor, made for one LED
  | 'sink' // pulls an LED or a speaker towards ground
  | 'input' // pulled up on the board, active when pulled to ground
  | 'output' // driven by the board at signal level
  | 'data' // one line of a fast bus
  | 'analogue' // audio and sensing
  | 'open' // wired to nothing, or not to be used
  | 'unknown';

/** The job that a signal, a lead part or a ground pin belongs to. */
export type Job = (typeof JOBS)[number];

export const JOBS = [
  'power-switch',
  'reset-switch',
  'drive-led',
  'power-led',
  'message-led',
  'speaker',
  'case-open',
  'key-lock',
  'sensor',
  'clear-settings',
  'usb2',
  'usb3',
  'usb-c',
  'ieee1394',
  'serial',
  'hd-audio',
  'ac97-audio',
  'fan',
  'main-power',
  'cpu-power',
  'card-power',
  'drive-power',
  'sata-data',
] as const;

export interface Signal {
  readonly id: string;
  /** As it stands beside a pin: short, in words that a board's manual would use. */
  readonly name: string;
  readonly nature: SignalNature;
  /** The job this signal alone already tells; grounds and shared rails have none. */
  readonly job?: Job;
  /** Nominal level of a rail. */
  readonly volts?: Volts;
  /** Where the meaning was read. */
  readonly source: string;
}
