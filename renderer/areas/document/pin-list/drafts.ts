import type { Workbench } from '../../../workbench';

/** Lists that were typed or pasted and not filled in, by connector: closing the window by a slip loses none. */
interface Drafts {
  /** What was open: the next build may have connectors of the same ids. */
  readonly opening: number | undefined;
  readonly lists: Map<string, string>;
}

const drafts = new WeakMap<Workbench['editor'], Drafts>();

function draftsOf({ editor }: Workbench): Drafts['lists'] {
  const opening = editor.getState().open?.opening;
  const kept = drafts.get(editor);
  if (kept !== undefined && kept.opening === opening) return kept.lists;
  const lists = new Map<string, string>();
  drafts.set(editor, { opening, lists });
  return lists;
}

export function draftFor(workbench: Workbench, connector: string): string {
  return draftsOf(workbench).get(connector) ?? '';
}

/** Keeps a list until it is filled in or something else is opened; an empty one is let go. */
export function keepDraft(workbench: Workbench, connector: string, text: string): void {
  const lists = draftsOf(workbench);
  if (text === '') lists.delete(connector);
  else lists.set(connector, text);
}
