import { Plus } from 'lucide-react';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import { capital } from '../../../../boards/base/capital';
import { placeName } from '../../../../boards/document/place-names';
import type { FanPlace, Tray } from '../../../../boards/document/tray';
import { trayPlaces } from '../../../../boards/document/tray-places';
import { airflowOf } from '../../../../boards/routing/case/airflow';
import { AIRFLOW_SOURCE, airflowWords } from '../../../../boards/routing/case/airflow-words';
import { doCommand } from '../../../do-command';
import { freshId } from '../../../files/file-name';
import { Button } from '../../../look/button';
import { keyed } from '../../../look/keyed';
import { blowsWords, WALL_WORDS } from '../../../words/tray-words';
import { useBuild, useSession, useWorkbench } from '../../../workbench';
import { Fold } from '../fold';
import { PartRow, RowGroup } from '../rows';
import { choose } from '../tray/tray-bench';
import { write } from '../tray/tray-moves';
import './air.css';

/**
 * Which way each fan blows, and what goes in against what goes out. What else is known of a fan is changed above,
 * once it is chosen.
 */
export function AirSection() {
  const { tray } = useBuild().case;
  if (tray === undefined) return null;
  return <Air tray={tray} />;
}

function Air({ tray }: { readonly tray: Tray }) {
  const chosen = useSession(({ selection }) => selection.kind === 'on-tray' && selection.part.kind === 'fan');
  return (
    <Fold title="Air" unfolds={chosen}>
      <Fans tray={tray} />
      <AddFan tray={tray} />
      <p className="soft small">
        Air leaves a fan on the side with the struts ({AIRFLOW_SOURCE}); an arrow on its frame counts for
        more.
      </p>
    </Fold>
  );
}

function Fans({ tray }: { readonly tray: Tray }) {
  const { fans = [] } = tray;
  if (fans.length === 0)
    return <p className="soft">No fan is in the walls of this case yet. Add each place that has one.</p>;
  return (
    <>
      <ul className="air-said" aria-label="What the fans do together">
        {keyed(airflowWords(airflowOf(fans), tray)).map(([key, words]) => (
          <li key={key}>{words}</li>
        ))}
      </ul>
      <RowGroup title="Where the struts look">
        {fans.map((fan) => (
          <FanRow key={fan.id} tray={tray} fan={fan} />
        ))}
      </RowGroup>
    </>
  );
}

function FanRow({ tray, fan }: { readonly tray: Tray; readonly fan: FanPlace }) {
  const { id, wall, flowM3PerHour } = fan;
  const flow = flowM3PerHour === undefined ? [] : [`${flowM3PerHour}\u00a0m³/h`];
  return (
    <PartRow
      part={{ kind: 'fan', id }}
      name={capital(placeName(tray, id))}
      words={[`at the ${WALL_WORDS[wall]}`, blowsWords(fan), ...flow].join(', ')}
      // Wall, flow and name are changed there.
      onChosen={showChosen}
      control={<StrutsChoice tray={tray} fan={fan} />}
    />
  );
}

/** Brings what is chosen to the top of the panel; the page itself stays where it is. */
function showChosen(): void {
  const panel = document.querySelector('.route-panel');
  const chosen = document.getElementById('route-chosen')?.closest('section');
  if (panel && chosen)
    panel.scrollTop += chosen.getBoundingClientRect().top - panel.getBoundingClientRect().top;
}

/** Which way the struts of a fan look; neither while nobody has looked. */
function StrutsChoice({ tray, fan }: { readonly tray: Tray; readonly fan: FanPlace }) {
  const workbench = useWorkbench();
  const { strutsFace, ...unseen } = fan;
  return (
    <ToggleButtonGroup
      className="segments"
      aria-label={`${capital(placeName(tray, fan.id))}: its struts look`}
      selectionMode="single"
      selectedKeys={strutsFace === undefined ? [] : [strutsFace]}
      onSelectionChange={(keys) => {
        const face = STRUTS.find(({ id }) => keys.has(id))?.id;
        write(workbench, { what: 'fan', place: face === undefined ? unseen : { ...fan, strutsFace: face } });
      }}
    >
      {STRUTS.map(({ id, label }) => (
        <ToggleButton key={id} id={id} className="segment">
          {label}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}

const STRUTS = [
  { id: 'inward', label: 'Inward' },
  { id: 'outward', label: 'Outward' },
] as const;

/** One more place, at the rear until its wall is said, and chosen so that it can be. */
function AddFan({ tray }: { readonly tray: Tray }) {
  const workbench = useWorkbench();
  const add = () => {
    const id = freshId('fan', 'fan', new Set(trayPlaces(tray).map(({ place }) => place.id)));
    const place = { id, wall: 'rear' } as const;
    if (doCommand(workbench, { name: 'add-to-tray', args: { places: [{ what: 'fan', place }], paths: [] } }))
      choose(workbench, { kind: 'fan', id });
  };
  return (
    <div className="form-doings">
      <Button onPress={add}>
        <Plus size={16} aria-hidden="true" />
        Add a fan
      </Button>
    </div>
  );
}
