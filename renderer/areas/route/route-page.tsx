import { useBuild } from '../../workbench';
import { NoTray } from './tray/no-tray';
import { TrayPane } from './tray/tray-pane';
import { TrayTools } from './tray/tray-tools';

/** The map with its tools; where there is no tray yet, what one is for. */
export function RoutePage() {
  const { tray } = useBuild().case;
  return (
    <main className="route-page" aria-label="Cable map">
      {tray === undefined ? (
        <NoTray />
      ) : (
        <>
          <TrayTools />
          <TrayPane tray={tray} />
        </>
      )}
    </main>
  );
}
