import type { Signal } from '../../../../boards/signals/signal';
import { SIGNALS, type SignalId } from '../../../../boards/signals/signals';

/** A signal in a list to choose from. */
export interface SignalEntry {
  readonly id: SignalId;
  readonly name: string;
}

const TWICE: ReadonlySet<string> = new Set(
  SIGNALS.map(({ name }) => name).filter((name, at, names) => names.indexOf(name) !== at),
);

/** Every signal, with the job behind the name where several have that name: "D− (usb3)". */
export const SIGNAL_ENTRIES: readonly SignalEntry[] = SIGNALS.map(
  ({ id, name, job }: Signal & { readonly id: SignalId }) => ({
    id,
    name: job !== undefined && TWICE.has(name) ? `${name} (${job.replaceAll('-', ' ')})` : name,
  }),
);
