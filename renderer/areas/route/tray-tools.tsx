import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import type { TraySide } from '../../../boards/document/tray';
import { useSession, useWorkbench } from '../../workbench';

const SIDES: readonly { readonly id: TraySide; readonly label: string }[] = [
  { id: 'front', label: 'From the front' },
  { id: 'back', label: 'From the back' },
];

/** From which side the tray is looked at. */
export function TrayTools() {
  const { session } = useWorkbench();
  const side = useSession((state) => state.traySide);
  return (
    <div className="tray-tools">
      <ToggleButtonGroup
        className="segments"
        aria-label="Look at the tray"
        selectionMode="single"
        disallowEmptySelection
        selectedKeys={[side]}
        onSelectionChange={(keys) => {
          const chosen = SIDES.find(({ id }) => keys.has(id));
          if (chosen) session.getState().lookFrom(chosen.id);
        }}
      >
        {SIDES.map(({ id, label }) => (
          <ToggleButton key={id} id={id} className="segment">
            {label}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
    </div>
  );
}
