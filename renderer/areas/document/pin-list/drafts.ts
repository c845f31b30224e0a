import type { Workbench } from '../../../workbench';

/** Lists that were typed or pasted and not filled in, by connector: closing the window by a slip loses none. */
const drafts = new WeakMap<Workbench, Map<string, string>>();

export function draftFor(workbench: Workbench, connector: string): string {
  return drafts.get(workbench)?.get(connector) ?? '';
}

/** Keeps a list until it is filled in; an empty one is let go. */
export function keepDraft(workbench: Workbench, connector: string, text: string): void {
  const own = drafts.get(workbench) ?? new Map<string, string>();
  drafts.set(workbench, own);
  if (text === '') own.delete(connector);
  else own.set(connector, text);
}
