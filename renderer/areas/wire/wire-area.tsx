import { Suspense } from 'react';
import { fetchedLater } from '../../fetched';
import { ShelfTabs } from '../../look/shelf-tabs';
import { useSession, useWorkbench } from '../../workbench';
import { CanvasPane } from './canvas-pane';
import { ConnectorsTree } from './connectors-tree';
import { FindingsPanel } from './findings-panel';
import { LeadsList } from './leads-list';
import { PlugCard } from './plug-card';
import { PowerBar } from './power/power-bar';
import { ShelfFoot } from './shelf-foot';
import { UnitsList } from './units/units-list';
import { useFocusBack } from './use-focus-back';
import './shelf.css';
import './wire.css';

const SeatingPanel = fetchedLater(() => import('./seating/seating-panel').then((part) => part.SeatingPanel));

/** Leads on the left, the board in the middle, what it means on the right. */
export function WireArea() {
  return (
    <div className="area wire-area">
      <Shelf />
      <Suspense fallback={<div className="canvas-pane" />}>
        <CanvasPane />
      </Suspense>
      <BesideBoard />
      <PowerBar />
    </div>
  );
}

/** What stands against power, or the best seating; while a plug is in the hand what it would change. */
function BesideBoard() {
  const seating = useSession(({ seatingOpen }) => seatingOpen);
  const inHand = useSession(({ placing }) => placing !== null);
  return (
    <>
      {(!seating || inHand) && <FindingsPanel />}
      {seating && (
        <Suspense fallback={<aside className="findings" hidden={inHand} />}>
          <SeatingPanel />
        </Suspense>
      )}
    </>
  );
}

function Shelf() {
  const { session } = useWorkbench();
  const section = useFocusBack();
  const shelf = useSession((state) => state.shelf);
  return (
    <section ref={section} className="shelf" aria-label="Shelf">
      <ShelfTabs
        label="What the shelf lists"
        open={shelf}
        onOpen={session.getState().showShelf}
        tabs={[
          { id: 'leads', name: 'Leads', shown: <LeadsList /> },
          { id: 'connectors', name: 'Connectors', shown: <ConnectorsTree /> },
          { id: 'units', name: 'Units', shown: <UnitsList /> },
        ]}
      />
      <ShelfFoot />
      <PlugCard />
    </section>
  );
}
