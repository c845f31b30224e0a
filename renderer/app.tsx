import { useKeys } from './actions/use-keys';
import { DialogLayer } from './dialogs/dialog-layer';
import { DropTarget } from './frame/drop-target';
import { Frame } from './frame/frame';
import { LiveRegion } from './frame/live-region';
import { StartScreen } from './start/start-screen';
import { useEditor } from './workbench';

/** The window: the start screen until something is open, then the frame. */
export function App() {
  useKeys();
  const anythingOpen = useEditor((editor) => editor.open !== null);
  return (
    <>
      {anythingOpen ? <Frame /> : <StartScreen />}
      <DialogLayer />
      <LiveRegion />
      <DropTarget />
    </>
  );
}
