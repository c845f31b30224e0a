import type { Kind } from './originals';

export interface MutantFailure {
  readonly number: number;
  readonly kind: Kind;
  readonly reason: string;
  /** The damaged file in base64, to be kept. */
  readonly data: string;
}

const MOST_KEPT = 50;

/** Adds what was thrown at a damaged file to those that are to be told, while there are few. */
export function noteFailure(
  failures: MutantFailure[],
  { number, kind, bytes }: { readonly number: number; readonly kind: Kind; readonly bytes: Uint8Array },
  thrown: unknown,
): void {
  if (failures.length >= MOST_KEPT) return;
  const reason = thrown instanceof Error ? `${thrown.message} ${whereOf(thrown)}` : String(thrown);
  failures.push({ number, kind, reason, data: base64(bytes) });
}

export function base64(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('base64');
}

function whereOf({ stack = '' }: Error): string {
  return stack
    .split('\n')
    .slice(1, 4)
    .map((line) => line.trim())
    .join(' < ');
}
