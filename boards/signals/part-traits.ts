import type { PartKind } from './part-kind';

export function isLed({ job }: PartKind): boolean {
  return job === 'power-led' || job === 'drive-led' || job === 'message-led';
}

/** An LED with one junction, which has one colour. */
export function hasOneColour(kind: PartKind): boolean {
  return isLed(kind) && kind.reversed !== 'other-colour';
}

/** A switch of either kind: a contact, or a transistor that stands in for one. */
export function isSwitch(kind: PartKind): boolean {
  return kind.path === 'closes-when-pressed' || (kind.path === 'one-way' && !isLed(kind));
}

/** A switch that something keeps closed for long, a lid that is off or a turned key, and no finger. */
export function staysClosed({ job }: PartKind): boolean {
  return job === 'case-open' || job === 'key-lock';
}

export function isFan({ job }: PartKind): boolean {
  return job === 'fan';
}
