import { createContext, use } from 'react';
import { useStore } from 'zustand';
import type { Build } from '../boards/document/build';
import type { HostApi, Output } from '../boards/host';
import type { CanvasView } from './canvas/canvas-props';
import type { Editor, EditorStore } from './store/editor';
import type { Recovery } from './store/recovery';
import type { Session, SessionStore } from './store/session-store';

/** What every part of the window works with. Made once at the start and handed down. */
export interface Workbench {
  readonly host: HostApi;
  /** What this page calls itself towards the machine. */
  readonly page: string;
  readonly about: Output<'about'>;
  readonly editor: EditorStore;
  readonly session: SessionStore;
  readonly recovery: Recovery;
  /** The canvas while it is on the screen: buttons and lists ask it to move. */
  readonly canvas: { current: CanvasView | null };
}

export const WorkbenchContext = createContext<Workbench | null>(null);

export function useWorkbench(): Workbench {
  const workbench = use(WorkbenchContext);
  if (workbench === null) throw new Error('No workbench above this view');
  return workbench;
}

/** A part of the session; the view is drawn again when that part changes. */
export function useSession<T>(select: (session: Session) => T): T {
  return useStore(useWorkbench().session, select);
}

export function useEditor<T>(select: (editor: Editor) => T): T {
  return useStore(useWorkbench().editor, select);
}

/**
 * The open build, in views that are only shown while there is one. A save makes no other build of it: nothing is
 * drawn again for that.
 */
export function useBuild(): Build {
  const build = useEditor(({ open }) => open?.history.present);
  if (build === undefined) throw new Error('Nothing is open');
  return build;
}
