import type { Pin } from '../document/connector';
import { signalOf } from '../signals/signals';

/** What stands beside a pin: the manual's own name for it, otherwise that of its signal. */
export function pinText(pin: Pin): string {
  if (pin.name !== undefined && pin.name.trim() !== '') return pin.name.trim();
  if (pin.missing) return 'no pin';
  if (pin.signal === undefined) return 'unknown';
  const { name } = signalOf(pin.signal);
  return pin.channel === undefined ? name : `${name} ${pin.channel}`;
}
