import { ok, type Result } from '../base/result';
import type { Build } from '../document/build';
import { applyCommand, labelOf } from './apply';
import type { Command } from './command';
import type { Refusal } from './refusal';

/** A build that can be gone back or forward to, and what the change between it and its neighbour was called. */
interface Step {
  readonly build: Build;
  readonly label: string;
}

/** Whole builds, oldest first in `past`, nearest first in `future`. Builds share all that did not change. */
export interface History {
  readonly past: readonly Step[];
  readonly present: Build;
  readonly future: readonly Step[];
}

export function startHistory(build: Build): History {
  return { past: [], present: build, future: [] };
}

/** Carries a command out as one step. One that changes nothing makes no step and keeps what can be redone. */
export function perform(history: History, command: Command): Result<History, Refusal> {
  const { past, present } = history;
  const result = applyCommand(present, command);
  if (!result.ok) return result;
  if (result.value === present) return ok(history);
  const step = { build: present, label: labelOf(present, command) };
  return ok({ past: [...past, step], present: result.value, future: [] });
}

/** One step back; the same history at the beginning. */
export function undo(history: History): History {
  const step = history.past.at(-1);
  if (step === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: step.build,
    future: [{ build: history.present, label: step.label }, ...history.future],
  };
}

/** One step forward; the same history at the end. */
export function redo(history: History): History {
  const [step, ...future] = history.future;
  if (step === undefined) return history;
  return {
    past: [...history.past, { build: history.present, label: step.label }],
    present: step.build,
    future,
  };
}

/** What undo would take back; undefined when there is nothing. */
export function undoLabel(history: History): string | undefined {
  return history.past.at(-1)?.label;
}

/** What redo would do again; undefined when there is nothing. */
export function redoLabel(history: History): string | undefined {
  return history.future[0]?.label;
}
