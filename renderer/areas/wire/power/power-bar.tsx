import { HardDrive, Usb } from 'lucide-react';
import type { ReactNode } from 'react';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import { SUPPLY_STATES, type SupplyState } from '../../../../boards/circuit/machine-state';
import { storyWords } from '../../../../boards/findings/words/story';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { CaseFront } from './case-front';
import { WayList } from './way-list';
import './power.css';

const SUPPLY_WORDS: Readonly<Record<SupplyState, string>> = {
  unplugged: 'Unplugged',
  standby: 'Standby',
  asleep: 'Asleep',
  running: 'Running',
};

/** Press the button on the screen before pressing the real one: what the circuit says would happen. */
export function PowerBar() {
  return (
    <section className="power-bar" aria-label="What would happen">
      <div className="power-controls">
        <Supply />
        <DriveBusy />
        <SocketsInUse />
      </div>
      <CaseFront />
      <Story />
      <WayList />
    </section>
  );
}

function Supply() {
  const { session } = useWorkbench();
  const supply = useSession(({ machine }) => machine.supply);
  return (
    <ToggleButtonGroup
      className="segments"
      aria-label="Power"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[supply]}
      onSelectionChange={(keys) => {
        const chosen = SUPPLY_STATES.find((state) => keys.has(state));
        if (chosen) session.getState().setMachine({ supply: chosen });
      }}
    >
      {SUPPLY_STATES.map((state) => (
        <ToggleButton key={state} id={state} className="segment">
          {SUPPLY_WORDS[state]}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}

interface ToggleProps {
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly icon: ReactNode;
  readonly children: ReactNode;
}

function Toggle({ on, onChange, icon, children }: ToggleProps) {
  return (
    <ToggleButton className="button power-toggle" isSelected={on} onChange={onChange}>
      {icon}
      {children}
    </ToggleButton>
  );
}

function DriveBusy() {
  const { session } = useWorkbench();
  const busy = useSession(({ machine }) => machine.drive === 'busy');
  return (
    <Toggle
      on={busy}
      onChange={(on) => session.getState().setMachine({ drive: on ? 'busy' : 'idle' })}
      icon={<HardDrive size={18} aria-hidden="true" />}
    >
      Drive busy
    </Toggle>
  );
}

function SocketsInUse() {
  const { session } = useWorkbench();
  const attached = useSession(({ machine }) => machine.attached);
  return (
    <Toggle
      on={attached}
      onChange={(on) => session.getState().setMachine({ attached: on })}
      icon={<Usb size={18} aria-hidden="true" />}
    >
      Sockets used
    </Toggle>
  );
}

function Story() {
  const build = useBuild();
  const machine = useSession((session) => session.machine);
  const { title, reason } = storyWords(build, machine);
  return (
    <div className="power-story" role="status">
      <p className="power-title">{title}</p>
      <p className="soft small">{reason}</p>
    </div>
  );
}
