import { RoutePage } from './route-page';
import { RoutePanel } from './route-panel';
import { TrayShelf } from './tray/tray-shelf';
import '../wire/findings.css';
import '../wire/shelf.css';
import '../wire/wire.css';
import './route.css';
import './cables/cables.css';

/** The tray of the case: what it has on the left, the map in the middle, what is chosen on the right. */
export function RouteArea() {
  return (
    <div className="area wire-area route-area">
      <TrayShelf />
      <RoutePage />
      <RoutePanel />
    </div>
  );
}
