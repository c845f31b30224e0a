import { type Lead, splitEnd, WIRE_COLOURS, type Wire } from '../../../boards/document/lead';
import type { Terminal } from '../../../boards/signals/part-kind';
import { partKindOf } from '../../../boards/signals/part-kinds';
import { doCommand } from '../../do-command';
import { Choice } from '../../look/choice';
import { useWorkbench } from '../../workbench';

const COLOURS = WIRE_COLOURS.map((id) => ({ id, label: id }));
const STRIPES = [{ id: 'none', label: 'no stripe' }, ...COLOURS] as const;

/** The wires of a lead: both ends in words, colour and stripe to choose. */
export function WireTable({ lead }: { readonly lead: Lead }) {
  return (
    <table className="wire-table">
      <caption>Wires</caption>
      <thead>
        <tr>
          <th scope="col">From</th>
          <th scope="col">To</th>
          <th scope="col">Colour</th>
          <th scope="col">Stripe</th>
        </tr>
      </thead>
      <tbody>
        {lead.wires.map((wire, at) => (
          <WireRow key={`${wire.from} ${wire.to}`} lead={lead} wire={wire} at={at} />
        ))}
      </tbody>
    </table>
  );
}

function WireRow({ lead, wire, at }: { readonly lead: Lead; readonly wire: Wire; readonly at: number }) {
  const workbench = useWorkbench();
  const from = endWords(lead, wire.from);
  const colour = (changed: { readonly colour?: Wire['colour']; readonly stripe?: Wire['colour'] | null }) =>
    doCommand(workbench, {
      name: 'colour-wire',
      args: { lead: lead.id, wire: at, colour: wire.colour, stripe: wire.stripe ?? null, ...changed },
    });
  return (
    <tr>
      <td>
        <span className="wire-chip" data-wire={wire.colour} /> {from}
      </td>
      <td>{endWords(lead, wire.to)}</td>
      <td>
        <Choice
          label={`Colour of the wire at ${from}`}
          labelShown={false}
          options={COLOURS}
          chosen={wire.colour}
          onChoose={(id) => colour({ colour: id })}
        />
      </td>
      <td>
        <Choice
          label={`Stripe of the wire at ${from}`}
          labelShown={false}
          options={STRIPES}
          chosen={wire.stripe ?? 'none'}
          onChoose={(id) => colour({ stripe: id === 'none' ? null : id })}
        />
      </td>
    </tr>
  );
}

/** "hole 2", "power switch, first leg": one end of a wire. */
function endWords(lead: Lead, end: string): string {
  const { owner, point } = splitEnd(end);
  const part = lead.parts.find((each) => each.id === owner);
  if (part === undefined) return lead.plugs.length > 1 ? `${owner}, hole ${point}` : `hole ${point}`;
  const kind = partKindOf(part.kind);
  const terminals: readonly Terminal[] = kind.terminals;
  return `${part.name ?? kind.name}, ${terminals.find((each) => each.id === point)?.name ?? point}`;
}
