/** What pulls an input low while nobody touches it, or while its button is pressed. */
export type Pull = 'free' | 'now-and-then' | 'held';

export interface Input {
  readonly rest: Pull;
  readonly pressed: Pull;
}

/** Everything that a start depends on, sound or not. */
export interface Machine {
  readonly mains: 'on' | 'off';
  /** Latched: its protection has tripped and waits for mains off. Weak: it sags when the rails are loaded. */
  readonly supply: 'sound' | 'dead' | 'latched' | 'weak';
  /** Cut off: the supply has it, and it does not reach the board. */
  readonly standby: 'sound' | 'overloaded' | 'cut-off';
  /** Whatever turns a press into PS_ON#: the board's logic, its cell, its wiring to the main plug. */
  readonly startLogic: 'sound' | 'dead';
  readonly settings: 'kept' | 'being-cleared';
  readonly power: Input;
  readonly reset: Input;
  readonly rails: 'sound' | 'shorted';
  readonly processorPower: 'joined' | 'missing';
  /** Whether the processor, and the code it starts with, can run at all. */
  readonly processor: 'sound' | 'dead';
  readonly memory: 'sound' | 'unusable';
  readonly processorFan: 'seen' | 'not-seen';
  readonly cooling: 'sound' | 'poor' | 'none';
}

const BUTTON: Input = { rest: 'free', pressed: 'held' };

/** A machine with nothing wrong. */
export const SOUND: Machine = {
  mains: 'on',
  supply: 'sound',
  standby: 'sound',
  startLogic: 'sound',
  settings: 'kept',
  power: BUTTON,
  reset: BUTTON,
  rails: 'sound',
  processorPower: 'joined',
  processor: 'sound',
  memory: 'sound',
  processorFan: 'seen',
  cooling: 'sound',
};
