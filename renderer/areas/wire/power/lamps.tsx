import { circuitOf } from '../../../../boards/circuit/circuit';
import type { MachineState } from '../../../../boards/circuit/machine-state';
import type { GlowSpan } from '../../../../boards/circuit/readings/glow';
import { brighterGlow, type Lamp, lampsOf } from '../../../../boards/circuit/readings/lamps';
import { leadOf } from '../../../../boards/document/lookup';
import { ampsSpanText } from '../../../../boards/findings/words/numbers';
import { useBuild, useSession } from '../../../workbench';

/** As many as always stand in the rows that are in sight. */
const IN_SIGHT = 6;

/** Every LED of the seated leads, as it would look in the chosen state. */
export function Lamps() {
  const build = useBuild();
  const machine = useSession((session) => session.machine);
  const lamps = lampsOf(build, circuitOf(build));
  return (
    <ul
      className="lamps"
      aria-label="Lamps"
      // Where they scroll, by the arrow keys too.
      {...(lamps.length > IN_SIGHT && {
        tabIndex: 0,
      })}
    >
      {lamps.map((lamp) => {
        const lead = leadOf(build, lamp.lead);
        const colour = lead?.parts.find(({ id }) => id === lamp.part)?.colour ?? 'green';
        return (
          <LampRow
            key={`${lamp.lead} ${lamp.part}`}
            lamp={lamp}
            name={lead?.name ?? ''}
            colour={colour}
            state={machine}
          />
        );
      })}
    </ul>
  );
}

interface LampRowProps {
  readonly lamp: Lamp;
  readonly name: string;
  readonly colour: string;
  readonly state: MachineState;
}

function LampRow({ lamp, name, colour, state }: LampRowProps) {
  const glow = brighterGlow(lamp, state);
  return (
    <li className="lamp">
      <svg className="lamp-sign" viewBox="0 0 24 24" data-wire={colour} aria-hidden="true">
        <circle
          className="lamp-halo"
          cx="12"
          cy="12"
          r="11"
          fillOpacity={brightness(glow.amps.usual) * 0.4}
        />
        <circle className="lamp-lens" cx="12" cy="12" r="6.5" fillOpacity={brightness(glow.amps.usual)} />
      </svg>
      <span className="lamp-words">
        <span>{name}</span> <span className="soft">{glowWords(glow)}</span>
      </span>
    </li>
  );
}

/** How full the lens is drawn: eyes tell currents apart by their ratio, from 0.05 to 10 mA. */
function brightness(amps: number): number {
  return Math.min(1, Math.max(0, Math.log10(Math.max(amps, 1e-9) / 50e-6) / Math.log10(200)));
}

/** "lit, 4 to 14 mA", "dark". */
function glowWords({ usual, least, most, amps }: GlowSpan): string {
  if (most === 'dark') return 'dark';
  const look = least === most ? usual : `${least} to ${most}`;
  return `${look}, ${ampsSpanText(amps)}`;
}
