import { ToggleButton } from 'react-aria-components/ToggleButton';
import type { Lead, Plug } from '../../../boards/document/lead';
import { colourWords, holesOf } from '../../words/plug-words';
import { useSession, useWorkbench } from '../../workbench';

interface WireChipsProps {
  readonly lead: Lead;
  readonly plug: Plug;
}

/** The wires of a plug, hole by hole, in their colours and in words. Each can be chosen, as on the drawing. */
export function WireChips({ lead, plug }: WireChipsProps) {
  const { session } = useWorkbench();
  const chosen = useSession(({ selection }) => (selection.kind === 'wire' ? selection.wire : null));
  const ref = { lead: lead.id, plug: plug.id };
  return (
    <ul className="wire-chips" aria-label="Wires by hole">
      {holesOf(lead, plug).flatMap(({ label, wire }) => {
        if (!wire) return [];
        const index = lead.wires.indexOf(wire);
        return [
          <li key={label}>
            <ToggleButton
              className="wire-choice"
              isSelected={chosen === index}
              onChange={(on) =>
                session
                  .getState()
                  .select(on ? { kind: 'wire', plug: ref, wire: index } : { kind: 'plug', plug: ref })
              }
            >
              <span className="mono">{label}</span>
              <span className="wire-chip" data-wire={wire.colour} data-stripe={wire.stripe} />
              {colourWords(wire)}
            </ToggleButton>
          </li>,
        ];
      })}
    </ul>
  );
}
