import { circuitOf } from '../../../../boards/circuit/circuit';
import type { MachineState } from '../../../../boards/circuit/machine-state';
import type { GlowSpan } from '../../../../boards/circuit/readings/glow';
import { brighterGlow, type Lamp, lampsOf } from '../../../../boards/circuit/readings/lamps';
import { leadOf } from '../../../../boards/document/lookup';
import { ampsSpanText } from '../../../../boards/findings/words/numbers';
import { useBuild, useSession } from '../../../workbench';

/** Every LED of the seated leads, as it would look in the chosen state. */
export function Lamps() {
  const build = useBuild();
  const machine = useSession((session) => session.machine);
  const lamps = lampsOf(build, circuitOf(build));
  return (
    <ul className="lamps" aria-label="Lamps">
      {lamps.map((lamp) => (
        <LampRow
          key={`${lamp.lead} ${lamp.part}`}
          lamp={lamp}
          name={leadOf(build, lamp.lead)?.name ?? ''}
          state={machine}
        />
      ))}
    </ul>
  );
}

interface LampRowProps {
  readonly lamp: Lamp;
  readonly name: string;
  readonly state: MachineState;
}

function LampRow({ lamp, name, state }: LampRowProps) {
  const glow = brighterGlow(lamp, state);
  return (
    <li className="lamp">
      <svg className={`lamp-sign lamp-${glow.usual}`} viewBox="0 0 16 16" aria-hidden="true">
        <circle cx="8" cy="8" r="6" />
      </svg>
      <span>
        {name}: {glowWords(glow)}
      </span>
    </li>
  );
}

/** "lit, 4 to 14 mA", "dark". */
function glowWords({ usual, least, most, amps }: GlowSpan): string {
  if (most === 'dark') return 'dark';
  const look = least === most ? usual : `${least} to ${most}`;
  return `${look}, ${ampsSpanText(amps)}`;
}
