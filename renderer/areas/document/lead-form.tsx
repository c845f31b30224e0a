import { Trash2 } from 'lucide-react';
import type { Lead, Plug } from '../../../boards/document/lead';
import { LIMITS } from '../../../boards/document/limits';
import { gridIndex } from '../../../boards/document/numbering';
import { partKindOf } from '../../../boards/signals/part-kinds';
import { doCommand } from '../../do-command';
import { Button } from '../../look/button';
import { Choice } from '../../look/choice';
import { TextLine } from '../../look/text-line';
import { plugTitle, plugWords } from '../../words/plug-words';
import { useWorkbench } from '../../workbench';
import { PlugDrawing } from '../wire/plug-drawing';
import { WireTable } from './wire-table';

/** One lead: its name, its plugs and their marks, its wires and their colours. */
export function LeadForm({ lead }: { readonly lead: Lead }) {
  const workbench = useWorkbench();
  const parts = lead.parts.map((part) => part.name ?? partKindOf(part.kind).name);
  return (
    <div className="form">
      <header className="form-head">
        <h2 className="mono">{lead.name}</h2>
        <Button onPress={() => doCommand(workbench, { name: 'remove-lead', args: { lead: lead.id } })}>
          <Trash2 size={16} aria-hidden="true" />
          Remove the lead
        </Button>
      </header>
      <TextLine
        label="Name of the lead"
        value={lead.name}
        maxLength={LIMITS.textLength}
        onDone={(name) => doCommand(workbench, { name: 'rename-lead', args: { lead: lead.id, name } })}
      />
      {parts.length > 0 && <p>Goes to: {parts.join(', ')}.</p>}
      {lead.plugs.map((plug) => (
        <PlugForm key={plug.id} lead={lead} plug={plug} />
      ))}
      <WireTable lead={lead} />
    </div>
  );
}

function PlugForm({ lead, plug }: { readonly lead: Lead; readonly plug: Plug }) {
  const workbench = useWorkbench();
  const holes = gridIndex(plug.grid).positions.map(({ label }) => ({ id: label, label: `hole ${label}` }));
  return (
    <section className="plug-form" aria-label={plugTitle(lead, plug)}>
      <PlugDrawing lead={lead} plug={plug} cellPx={20} />
      <p className="soft">{plugWords(lead, plug)}</p>
      <Choice
        label="Mark"
        options={[{ id: '', label: 'no mark' }, ...holes]}
        chosen={plug.mark ?? ''}
        onChoose={(mark) =>
          doCommand(workbench, {
            name: 'mark-plug',
            args: { lead: lead.id, plug: plug.id, mark: mark === '' ? null : mark },
          })
        }
      />
    </section>
  );
}
