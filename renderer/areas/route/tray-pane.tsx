import { useMemo } from 'react';
import type { Tray } from '../../../boards/document/tray';
import type { Target } from '../../canvas/canvas-props';
import type { TrayTarget } from '../../canvas/tray/tray-hits';
import { usePart } from '../../fetched';
import { useShownTheme } from '../../look/use-media';
import { mapWords } from '../../words/tray-words';
import { useBuild, useSession, useWorkbench } from '../../workbench';
import { TRAY_CANVAS } from './tray-canvas-part';

/** The map in the middle. */
export function TrayPane({ tray }: { readonly tray: Tray }) {
  const TrayCanvas = usePart(TRAY_CANVAS);
  const workbench = useWorkbench();
  const { session } = workbench;
  const build = useBuild();
  const side = useSession((state) => state.traySide);
  const selection = useSession((state) => state.selection);
  const theme = useShownTheme(useSession((state) => state.settings.theme));
  const listeners = useMemo(
    () => ({
      onChoose: (target: TrayTarget | null) => session.getState().select(target ?? { kind: 'nothing' }),
      onHover: (target: Target | null) => session.getState().hover(target),
    }),
    [session],
  );
  return (
    <div className="tray-pane">
      <TrayCanvas
        ref={workbench.canvas}
        build={build.id}
        tray={tray}
        board={build.board}
        side={side}
        selection={selection}
        label={mapWords(tray, side)}
        theme={theme}
        {...listeners}
      />
    </div>
  );
}
