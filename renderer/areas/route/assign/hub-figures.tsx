import { connectorName } from '../../../../boards/document/names';
import type { HubRating } from '../../../../boards/document/rating';
import { doCommand } from '../../../do-command';
import { Choice } from '../../../look/choice';
import { useBuild, useWorkbench } from '../../../workbench';
import { Figure } from '../figure';
import type { SubjectOf } from './figure-entries';

/** A hub by its maker's sheet. */
export function HubFigures({ unit, hub, usual, outlets }: SubjectOf<'hub'>) {
  const workbench = useWorkbench();
  const build = useBuild();
  const put = (next: HubRating | null) =>
    doCommand(workbench, { name: 'rate-unit', args: { unit, drive: null, hub: next } });
  const of = hub ?? usual;
  const { speedOutlet, ...silent } = of;
  return (
    <>
      <Choice
        label="It is fed from"
        options={[
          { id: 'header', label: 'the header' },
          { id: 'supply', label: 'the supply unit' },
        ]}
        chosen={of.fedBy}
        onChoose={(fedBy) => put({ ...of, fedBy })}
      />
      <Figure
        label="Its outlets may carry together, A"
        value={hub?.amps}
        onDone={(amps) => put(amps === undefined ? null : { ...of, amps })}
      />
      <Choice
        label="The speed is reported of"
        options={[
          { id: 'none', label: 'none of its fans' },
          ...outlets.map((id) => ({ id, label: connectorName(build, id) })),
        ]}
        chosen={speedOutlet ?? 'none'}
        onChoose={(id) => put(id === 'none' ? silent : { ...of, speedOutlet: id })}
      />
    </>
  );
}
