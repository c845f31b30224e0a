import { leadsOf } from '../../boards/document/lookup';
import { LEAD_TYPES } from '../../boards/library/leads/index';
import { makeLead } from '../../boards/library/make-lead';
import { doCommand } from '../do-command';
import { freshId } from '../files/file-name';
import { Window } from '../look/window';
import { plugWords } from '../words/plug-words';
import { useBuild, useWorkbench } from '../workbench';
import { type SearchEntry, SearchList } from './search-list';

/** Every lead the library knows; choosing one hangs it in the case. */
export function AddLeadDialog({ onClose }: { readonly onClose: () => void }) {
  const workbench = useWorkbench();
  const build = useBuild();
  const add = (typeId: string, title: string) => {
    const id = freshId(title, 'lead', new Set(leadsOf(build).map((lead) => lead.id)));
    const lead = makeLead(typeId, { id, name: title });
    const [plug] = lead.plugs;
    if (!doCommand(workbench, { name: 'add-lead', args: { lead, to: 'case' } }) || !plug) return;
    const { select, showPage } = workbench.session.getState();
    select({ kind: 'plug', plug: { lead: id, plug: plug.id } });
    showPage('lead');
  };
  const entries = LEAD_TYPES.map(({ id, title, source, lead }): SearchEntry => {
    const [plug] = lead.plugs;
    return {
      id,
      title,
      words: `${plug ? plugWords(lead, plug) : ''}, ${source}`,
      run: () => {
        onClose();
        add(id, title);
      },
    };
  });
  return (
    <Window title="Add a lead" onClose={onClose}>
      <SearchList
        label="Search leads"
        placeholder="Switch, LED, USB, fan…"
        entries={entries}
        empty="The library has no lead of that name."
      />
    </Window>
  );
}
