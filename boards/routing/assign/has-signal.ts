import type { Connector } from '../../document/connector';
import type { SignalId } from '../../signals/signals';

export function hasSignal({ pins }: Connector, signal: SignalId): boolean {
  return pins.some((pin) => pin.signal === signal);
}
