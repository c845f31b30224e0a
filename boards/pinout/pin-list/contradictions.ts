import type { SignalId } from '../../signals/signals';
import type { ListProblem } from './list-problem';
import type { ReadPin } from './reading';

/** Signals of which a header has one for each port, and what each comes in a pair with. Common practice, no source. */
const PAIRS: readonly (readonly [SignalId, SignalId])[] = [
  ['drive-led-feed', 'drive-led-sink'],
  ['power-led-feed', 'power-led-sink'],
  ['message-led-feed', 'message-led-sink'],
  ['usb-d-plus', 'usb-d-minus'],
  ['usb3-d-plus', 'usb3-d-minus'],
  ['usb3-ssrx-plus', 'usb3-ssrx-minus'],
  ['usb3-sstx-plus', 'usb3-sstx-minus'],
];

const ONCE: ReadonlySet<string> = new Set([
  ...PAIRS.flat(),
  ...['power-switch-input', 'reset-switch-input', 'case-open-input', 'key-lock-input', 'speaker-drive'],
  ...['speaker-feed', 'fan-tach', 'fan-pwm', 'ps-on', 'power-ok', 'hd-presence', 'hd-sense-send'],
]);

/** What LEDs may share in the place of a second side of their own. */
const COMMON: ReadonlySet<string | undefined> = new Set([
  'ground',
  'supply-5v',
  'supply-3v3',
  'supply-5v-standby',
]);

function hasCommon(pins: readonly ReadPin[]): boolean {
  return pins.some(({ signal }) => COMMON.has(signal));
}

/** Signals that are there twice on one port, and halves of pairs without the other. */
export function contradictions(pins: readonly ReadPin[]): readonly ListProblem[] {
  const alike = new Map<string, ReadPin[]>();
  for (const pin of pins) {
    if (pin.signal === undefined || !ONCE.has(pin.signal)) continue;
    const key = `${pin.signal} ${pin.channel ?? ''}`;
    alike.set(key, [...(alike.get(key) ?? []), pin]);
  }
  const twice = [...alike.values()].flatMap((same): ListProblem[] => {
    const [first, second] = same;
    if (first?.signal === undefined || second === undefined) return [];
    return [{ code: 'signal-twice', signal: first.signal, labels: same.map(({ label }) => label) }];
  });
  const has = (signal: SignalId) => pins.filter((pin) => pin.signal === signal);
  const halves = PAIRS.flatMap(([plus, minus]) => [[plus, minus] as const, [minus, plus] as const]).flatMap(
    ([signal, lacks]): ListProblem[] => {
      const there = has(signal);
      const isLed = signal.endsWith('-feed') || signal.endsWith('-sink');
      if (there.length === 0 || has(lacks).length > 0 || (isLed && hasCommon(pins))) return [];
      return [{ code: 'half-pair', signal, lacks, labels: there.map(({ label }) => label) }];
    },
  );
  return [...twice, ...halves];
}
