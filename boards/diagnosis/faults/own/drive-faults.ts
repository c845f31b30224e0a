import type { Build } from '../../../document/build';
import { leadsOf, seatOf, unitsOf, unitWith } from '../../../document/lookup';
import { connectorName, leadName } from '../../../document/names';
import { comesFromFourPins } from '../../../findings/rules/adapter-may-burn';
import { seatedPlugs } from '../../../fit/seated-plug';
import { way } from '../fault';
import { isInlet } from './feed';
import { plugOff } from './plug-off';
import type { OwnFault, OwnFaults } from './share-out';
import type { PowerCables } from './supply-cables';

const DATA = 'sata-data';

/** A cable lies in its socket for years and wears; left off is what happens on the day. Common practice, no source. */
const PART_OFF = 0.3;
const DATA_OFF = [way(1, {}, { 'drive-missing': 0.95, 'no-system': 0.3 })];

/** What may be wrong at the drives that a build has: their data cables, their sockets, the adapters before them. */
export function driveFaults(build: Build, cables: PowerCables): OwnFaults {
  const data = dataCables(build);
  const sockets = unitsOf(build).flatMap(({ kind, name, connectors }) =>
    kind === 'drive'
      ? connectors.filter((connector) => isInlet(build, connector)).map(({ id }) => ({ id, drive: name }))
      : [],
  );
  return {
    'data-cable': data.length > 0 ? data : undefined,
    'drive-socket':
      sockets.length > 0
        ? sockets.map(({ id, drive }) => ({
            id: `drive-socket/${id}`,
            name: `The supply socket of ${drive} is broken.`,
          }))
        : undefined,
    'adapter-burnt': cables.plugs.some(({ end }) => end === 'outlet') ? adaptersOf(cables) : undefined,
  };
}

function dataCables(build: Build): readonly OwnFault[] {
  return leadsOf(build).flatMap((lead): readonly OwnFault[] => {
    const seated = lead.plugs.flatMap(({ id, family }) => {
      const seat = family === DATA ? seatOf(build, { lead: lead.id, plug: id }) : undefined;
      return seat ? [seat] : [];
    });
    const [first] = seated;
    const isAtDrive = seated.some(({ connector }) => unitWith(build, connector)?.kind === 'drive');
    if (!first || !isAtDrive || lead.setAside === true) return [];
    const name = leadName(build, lead.id);
    return [
      { id: `${lead.id}/${first.plug}/worn`, name: `${name} is worn or badly seated.`, lead: lead.id },
      ...seated.map((seat) => ({
        ...plugOff(build, seat),
        part: PART_OFF / seated.length,
        ways: DATA_OFF,
      })),
    ];
  });
}

/** Adapters from a four-pin plug, which the rules say to look at before they are trusted. */
function adaptersOf({ build, plugs }: PowerCables): readonly OwnFault[] {
  const seated = seatedPlugs(build);
  const adapters = plugs.filter(
    ({ lead, plug }) => plug.family === 'sata-power' && comesFromFourPins({ build, plugs: seated }, lead),
  );
  return adapters.map(({ lead, plug, connector }) => ({
    id: `${lead.id}/${plug.id}/burnt`,
    name: `${lead.name} has burnt at ${connectorName(build, connector.id)}.`,
    lead: lead.id,
  }));
}
