import { Power, RotateCcw } from 'lucide-react';
import type { ReactNode } from 'react';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import type { Button } from '../../../../boards/circuit/machine-state';
import { useSession, useWorkbench } from '../../../workbench';
import { Lamps } from './lamps';

/** The front of the case as it stands before the person: two buttons to hold, and the lamps by them. */
export function CaseFront() {
  return (
    <fieldset className="case-front" aria-label="Case front">
      <Hold button="power" icon={<Power size={20} aria-hidden="true" />}>
        Hold power
      </Hold>
      <Hold button="reset" icon={<RotateCcw size={16} aria-hidden="true" />}>
        Hold reset
      </Hold>
      <Lamps />
    </fieldset>
  );
}

interface HoldProps {
  readonly button: Button;
  readonly icon: ReactNode;
  readonly children: ReactNode;
}

function Hold({ button, icon, children }: HoldProps) {
  const { session } = useWorkbench();
  const held = useSession(({ machine }) => machine.held);
  const change = (on: boolean) =>
    session.getState().setMachine({ held: on ? [...held, button] : held.filter((one) => one !== button) });
  return (
    <ToggleButton className="front-button" isSelected={held.includes(button)} onChange={change}>
      <span className={`front-cap front-cap-${button}`}>{icon}</span>
      {children}
    </ToggleButton>
  );
}
