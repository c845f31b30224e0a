import {
  CircleMinus,
  Diamond,
  Fan,
  HardDrive,
  Hexagon,
  type LucideIcon,
  MousePointer2,
  PlugZap,
  RectangleVertical,
  Spline,
  SquareDot,
} from 'lucide-react';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import { Tooltip, TooltipTrigger } from 'react-aria-components/Tooltip';
import type { TraySide } from '../../../../boards/document/tray';
import { TRAY_TOOLS, type TrayTool } from '../../../store/session';
import { TOOL_WORDS } from '../../../words/tray-words';
import { useSession, useWorkbench } from '../../../workbench';
import { beginNew, takeTool } from './tray-additions';
import { OTHER_SIDE_KEY, TOOL_KEYS } from './tray-keys';

/** From which side the tray is looked at, and what a press on it does. */
export function TrayTools() {
  return (
    <div className="tray-tools">
      <Sides />
      <Palette />
    </div>
  );
}

const SIDES: readonly { readonly id: TraySide; readonly label: string }[] = [
  { id: 'front', label: 'Front' },
  { id: 'back', label: 'Back' },
];

function Sides() {
  const { session } = useWorkbench();
  const side = useSession((state) => state.traySide);
  return (
    <ToggleButtonGroup
      className="segments"
      aria-label="Look at the tray from the"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[side]}
      onSelectionChange={(keys) => {
        const chosen = SIDES.find(({ id }) => keys.has(id));
        if (chosen) session.getState().lookFrom(chosen.id);
      }}
    >
      {SIDES.map(({ id, label }) => (
        <TooltipTrigger key={id} delay={500}>
          <ToggleButton id={id} className="segment">
            {label}
          </ToggleButton>
          <Tooltip className="tooltip" placement="bottom" offset={6}>
            The tray from the {id}, or from the other side: <span className="keys">{OTHER_SIDE_KEY}</span>
          </Tooltip>
        </TooltipTrigger>
      ))}
    </ToggleButtonGroup>
  );
}

/** Much like what each of them draws. */
const ICONS: Readonly<Record<TrayTool, LucideIcon>> = {
  choose: MousePointer2,
  tie: CircleMinus,
  bend: Diamond,
  end: SquareDot,
  opening: RectangleVertical,
  bay: HardDrive,
  supply: PlugZap,
  standoff: Hexagon,
  fan: Fan,
  path: Spline,
};

function Palette() {
  const workbench = useWorkbench();
  const tool = useSession((state) => state.trayTool);
  return (
    <ToggleButtonGroup
      className="tray-palette"
      aria-label="Tools"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[tool]}
    >
      {TRAY_TOOLS.map((id) => {
        const Icon = ICONS[id];
        return (
          <TooltipTrigger key={id} delay={500}>
            <ToggleButton
              id={id}
              className="button button-quiet button-icon tray-tool"
              aria-label={TOOL_WORDS[id]}
              onPress={({ pointerType }) => {
                // For the keys a tool is of no use without a place to move.
                if (pointerType === 'keyboard' || pointerType === 'virtual') beginNew(workbench, id);
                else takeTool(workbench, id);
              }}
            >
              <Icon size={18} aria-hidden="true" />
            </ToggleButton>
            <Tooltip className="tooltip" placement="bottom" offset={6}>
              {TOOL_WORDS[id]} <span className="keys">{TOOL_KEYS[id]}</span>
            </Tooltip>
          </TooltipTrigger>
        );
      })}
    </ToggleButtonGroup>
  );
}
