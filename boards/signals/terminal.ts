import type { Terminal } from './part-kind';
import type { SignalId } from './signals';

/** One row of a part's table: where a wire ends, and the board signals that are right there, best first. */
export function terminal(id: string, name: string, ...wants: SignalId[]): Terminal {
  return { id, name, wants };
}
