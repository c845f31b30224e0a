import { byIdentity } from '../../base/by-identity';
import type { TouchResult } from '../../document/pin-reading';
import { SIGNAL_IDS, type SignalId } from '../../signals/signals';
import type { Stub } from '../../signals/stub';
import { stubOf } from '../../signals/stub-of';
import { isSeen } from './behind-pin';

/** Signals that no reading of a meter, a touch or an LED tester tells from each other. */
export interface PinKind {
  readonly index: number;
  readonly signals: readonly SignalId[];
  /** What of the stub can be seen. */
  readonly stub: Stub;
  /** What pulling it to ground for a moment does. */
  readonly touched?: 'starts' | 'resets';
}

/** Inputs that the machine answers at once. The others that are pulled up tell nothing to the eye. */
const ANSWERS: Readonly<Partial<Record<SignalId, 'starts' | 'resets'>>> = {
  'power-switch-input': 'starts',
  'reset-switch-input': 'resets',
};

const kindsOf = byIdentity((ids: readonly SignalId[]) => {
  const groups = new Map<
    string,
    { signals: SignalId[]; stub: Stub; touched: 'starts' | 'resets' | undefined }
  >();
  for (const signal of ids) {
    const stub = stubOf({ signal }).filter(isSeen);
    const touched = ANSWERS[signal];
    const key = JSON.stringify([stub, touched]);
    const group = groups.get(key) ?? { signals: [], stub, touched };
    groups.set(key, group);
    group.signals.push(signal);
  }
  return [...groups.values()].map(
    ({ signals, stub, touched }, index): PinKind => ({ index, signals, stub, ...(touched && { touched }) }),
  );
});

/** Every kind of pin that readings can tell from the others, derived from the stubs of all signals. */
export function pinKinds(): readonly PinKind[] {
  return kindsOf(SIGNAL_IDS);
}

const indexOf = byIdentity(
  (kinds: readonly PinKind[]) =>
    new Map(kinds.flatMap(({ index, signals }) => signals.map((signal) => [signal, index] as const))),
);

/** The index of the kind that a signal belongs to. */
export function kindIndex(signal: SignalId): number {
  const index = indexOf(pinKinds()).get(signal);
  if (index === undefined) throw new Error(`No kind for ${signal}`);
  return index;
}

/** What the machine does at a touch that works, in a state; undefined where it does nothing. */
export function answerTo(
  touched: PinKind['touched'],
  supply: 'standby' | 'running',
): TouchResult | undefined {
  if (touched === 'starts') return supply === 'standby' ? 'started' : 'stopped';
  return touched === 'resets' && supply === 'running' ? 'reset' : undefined;
}
