import type { Lead, Plug } from '../../../boards/document/lead';
import { colourWords, holesOf } from '../../words/plug-words';

/** The wires of a plug, hole by hole, in their colours and in words. */
export function WireChips({ lead, plug }: { readonly lead: Lead; readonly plug: Plug }) {
  return (
    <ul className="wire-chips" aria-label="Wires by hole">
      {holesOf(lead, plug).flatMap(({ label, wire }) =>
        wire
          ? [
              <li key={label}>
                <span className="mono">{label}</span>
                <span className="wire-chip" data-wire={wire.colour} data-stripe={wire.stripe} />
                {colourWords(wire)}
              </li>,
            ]
          : [],
      )}
    </ul>
  );
}
