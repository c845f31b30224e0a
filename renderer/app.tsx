import { Suspense } from 'react';
import { usePressesLeaveLines } from './actions/finish-typing';
import { useKeys } from './actions/use-keys';
import { BOARD_CANVAS } from './areas/wire/board-canvas-part';
import { DialogLayer } from './dialogs/dialog-layer';
import { fetched, usePart } from './fetched';
import { DropTarget } from './frame/drop-target';
import { LiveRegion } from './frame/live-region';
import { StartScreen } from './start/start-screen';
import { useEditor } from './workbench';

const FRAME = fetched(() => import('./frame/frame').then(({ Frame }) => Frame));

/** Fetches what an open build is shown with, before it is wanted. */
export async function fetchBench(): Promise<void> {
  await Promise.all([FRAME.fetch(), BOARD_CANVAS.fetch()]);
}

/** The window: the start screen until something is open, then the frame. */
export function App() {
  useKeys();
  usePressesLeaveLines();
  const anythingOpen = useEditor((editor) => editor.open !== null);
  return (
    <>
      {anythingOpen ? (
        <Suspense fallback={null}>
          <Bench />
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

function Bench() {
  const Frame = usePart(FRAME);
  return <Frame />;
}
