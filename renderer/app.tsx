import { lazy, Suspense } from 'react';
import { useKeys } from './actions/use-keys';
import { DialogLayer } from './dialogs/dialog-layer';
import { DropTarget } from './frame/drop-target';
import { LiveRegion } from './frame/live-region';
import { StartScreen } from './start/start-screen';
import { useEditor } from './workbench';

/** Fetches what comes after the start screen. */
export const fetchFrame = () => import('./frame/frame');
const Frame = lazy(() => fetchFrame().then((part) => ({ default: part.Frame })));

/** The window: the start screen until something is open, then the frame. */
export function App() {
  useKeys();
  const anythingOpen = useEditor((editor) => editor.open !== null);
  return (
    <>
      {anythingOpen ? (
        <Suspense fallback={null}>
          <Frame />
        </Suspense>
      ) : (
        <StartScreen />
      )}
      <DialogLayer />
      <LiveRegion />
      <DropTarget />
    </>
  );
}
