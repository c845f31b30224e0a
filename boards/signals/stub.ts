import type { ParameterId } from './parameters';

/** A supply inside the machine. */
export const RAILS = [
  { id: 'main-5v', volts: 'main-5v', live: 'running' },
  { id: 'main-12v', volts: 'main-12v', live: 'running' },
  { id: 'main-3v3', volts: 'main-3v3', live: 'running' },
  { id: 'main-minus-12v', volts: 'main-minus-12v', live: 'running' },
  { id: 'main-minus-5v', volts: 'main-minus-5v', live: 'running' },
  { id: 'standby-5v', volts: 'standby-5v', live: 'standby' },
  { id: 'logic', volts: 'logic-volts', live: 'standby' },
  { id: 'audio', volts: 'audio-volts', live: 'running' },
  { id: 'serial', volts: 'serial-volts', live: 'running' },
  { id: 'cell', volts: 'cell-volts', live: 'always' },
] as const satisfies readonly {
  readonly id: string;
  readonly volts: ParameterId;
  /** From which supply state on it is live. */
  readonly live: 'always' | 'standby' | 'running';
}[];

export type RailId = (typeof RAILS)[number]['id'];

/** When an output on the board, or the switch of a jack on it, pulls its pin down. */
export type PullCondition =
  | 'running'
  | 'asleep'
  | 'drive-busy'
  | 'speaker-sounds'
  | 'never-at-rest'
  | 'sockets-used';

/** One thing that hangs on a pin inside the board. */
export type StubElement =
  | {
      readonly kind: 'rail';
      readonly rail: RailId;
      readonly ohms: ParameterId;
      /** Joined only while the machine sleeps: the other colour of a two-colour LED. */
      readonly when?: 'asleep';
    }
  | {
      readonly kind: 'fused-rail';
      readonly rail: RailId;
      readonly coldOhms: ParameterId;
      readonly tripAmps: ParameterId;
      readonly trippedOhms: ParameterId;
    }
  | { readonly kind: 'ground'; readonly ohms: ParameterId }
  | { readonly kind: 'pulls-low'; readonly when: PullCondition; readonly ohms: ParameterId };

export type Stub = readonly StubElement[];
