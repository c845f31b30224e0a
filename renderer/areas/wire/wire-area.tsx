import { lazy, Suspense } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components/Tabs';
import type { ShelfTab } from '../../store/session';
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

const SeatingPanel = lazy(() =>
  import('./seating/seating-panel').then((part) => ({ default: part.SeatingPanel })),
);

const TABS: readonly ShelfTab[] = ['leads', 'connectors', 'units'];

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
      <Tabs
        className="shelf-tabs"
        selectedKey={shelf}
        onSelectionChange={(key) => {
          const tab = TABS.find((each) => each === key);
          if (tab) session.getState().showShelf(tab);
        }}
      >
        <div className="panel-head">
          <TabList className="tab-list" aria-label="What the shelf lists">
            <Tab id="leads" className="tab">
              Leads
            </Tab>
            <Tab id="connectors" className="tab">
              Connectors
            </Tab>
            <Tab id="units" className="tab">
              Units
            </Tab>
          </TabList>
        </div>
        <TabPanel id="leads" className="tab-panel">
          <LeadsList />
        </TabPanel>
        <TabPanel id="connectors" className="tab-panel">
          <ConnectorsTree />
        </TabPanel>
        <TabPanel id="units" className="tab-panel">
          <UnitsList />
        </TabPanel>
      </Tabs>
      <ShelfFoot />
      <PlugCard />
    </section>
  );
}
