import { type Pin, PinZ } from '../../../../boards/document/connector';
import type { SignalId } from '../../../../boards/signals/signals';
import { hasWakeJumper } from '../../../../boards/signals/stub-of';

export type PinChange = { readonly [Field in keyof Pin]?: Pin[Field] | undefined };

/** A pin with some fields set anew; those set to undefined or emptied are left out of the document. */
export function pinWith(pin: Pin, changed: PinChange): Pin {
  const all = Object.entries({ ...pin, ...changed }).filter(
    ([, value]) => value !== undefined && value !== '',
  );
  return PinZ.parse(Object.fromEntries(all));
}

/** A pin with another signal: it is there, and a wake jumper stays only where there can be one. */
export function pinWithSignal(pin: Pin, signal: SignalId): Pin {
  return pinWith(pin, {
    signal: signal === 'unknown' ? undefined : signal,
    missing: undefined,
    ...(!hasWakeJumper(signal) && { wakeSupply: undefined }),
  });
}

/** A position where no pin stands: what a pin would do is gone, what is printed there is not. */
export function pinMissing(pin: Pin, missing: boolean): Pin {
  if (!missing) return pinWith(pin, { missing: undefined });
  return pinWith(pin, {
    missing: true,
    signal: undefined,
    channel: undefined,
    belongsTo: undefined,
    values: undefined,
    wakeSupply: undefined,
  });
}
