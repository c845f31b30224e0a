import type { SignalId } from './signals';
import type { Stub, StubElement } from './stub';
import { STUBS } from './stubs';

/** The 5 V that a wake jumper can lay on the supply pins of a socket: live while the machine is off, or not. */
export const WAKE_SUPPLIES = ['standby', 'main'] as const;

/** What of a pin decides what the board holds behind it. */
export interface StubbedPin {
  readonly signal?: SignalId | undefined;
  readonly wakeSupply?: (typeof WAKE_SUPPLIES)[number] | undefined;
}

/** What the board holds behind a pin, with its wake jumper as the sheet states it; without one, standby. */
export function stubOf(pin: StubbedPin): Stub {
  const stub = STUBS[pin.signal ?? 'unknown'];
  if (pin.wakeSupply !== 'main') return stub;
  return stub.map((element) => (isJumpered(element) ? { ...element, rail: 'main-5v' } : element));
}

/** Whether boards let a jumper choose the supply behind a signal. */
export function hasWakeJumper(signal: SignalId): boolean {
  return STUBS[signal].some(isJumpered);
}

function isJumpered(element: StubElement): boolean {
  return element.kind === 'fused-rail' && element.rail === 'standby-5v';
}
