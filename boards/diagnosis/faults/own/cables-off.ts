import type { Build } from '../../../document/build';
import type { Connector } from '../../../document/connector';
import { connectorName, leadName } from '../../../document/names';
import { tellsOutlets } from '../../../findings/fed-pins';
import type { Job } from '../../../signals/signal';
import { way } from '../fault';
import { feedOf, type InletFeed } from './feed';
import { plugOff } from './plug-off';
import type { OwnFault } from './share-out';
import type { PowerCables, PowerPlug } from './supply-cables';
import { jobsLost } from './wrong-feed';

/** What may lack its plug, the gravest first: of several that one cable feeds, the first is what shows. */
const JOBS = ['main-power', 'cpu-power', 'card-power', 'drive-power'] as const;
type PowerJob = (typeof JOBS)[number];

/** The supply's own end of a cable is plugged once and left: beside it a device's end. Common practice, no source. */
const PART_AT_SUPPLY = 0.3;

/** Of two plugs on one connector the other still feeds it, less well. Common practice, no source. */
const HALF = [way(2, { supply: 'weak' }), way(1, {}, { 'off-in-use': 0.3, restarts: 0.3 })] as const;

interface Off {
  readonly job: PowerJob;
  readonly own: OwnFault;
}

/** What it takes to leave each job without power; a job that the build has no connector for is not told. */
export function cablesOff(cables: PowerCables): ReadonlyMap<Job, readonly OwnFault[]> {
  const { build, plugs } = cables;
  const told = tellsOutlets(build);
  const inlets = feedOf(build);
  const offs = [...plugs.flatMap((plug) => offAt(cables, plug)), ...(told ? missingIn(cables, inlets) : [])];
  return new Map(
    JOBS.flatMap((job) => {
      const isSaid = inlets.some(
        ({ connector, job: its }) =>
          its === job && (told || plugs.some((plug) => plug.connector.id === connector.id)),
      );
      const own = new Map(offs.flatMap((off) => (off.job === job ? [[off.own.id, off.own] as const] : [])));
      return isSaid ? [[job, [...own.values()]] as const] : [];
    }),
  );
}

function offAt({ build, plugs }: PowerCables, { seat, connector, end }: PowerPlug): readonly Off[] {
  const without: Build = { ...build, seats: build.seats.filter((each) => each !== seat) };
  const own = feedOf(build).find((inlet) => inlet.connector.id === connector.id);
  const lost = own ? [own.job] : jobsLost(without, build);
  const job = JOBS.find((each) => lost.includes(each));
  if (job === undefined) return [];
  const beside = plugs.some((each) => each.seat !== seat && each.connector === connector);
  return [
    {
      job,
      own: {
        ...plugOff(build, seat),
        part: end === 'outlet' ? PART_AT_SUPPLY : 1,
        ...(beside && end === 'inlet' ? { ways: HALF } : {}),
      },
    },
  ];
}

/** What lacks its power in the build as it is written, with the plug that would bring it. */
function missingIn({ build, plugs, loose }: PowerCables, inlets: readonly InletFeed[]): readonly Off[] {
  const taken = new Set<(typeof loose)[number]>();
  return inlets
    .filter((inlet) => lacksPower(inlet, inlets))
    .map(({ connector, job }): Off => {
      const there = plugs.find((plug) => plug.connector.id === connector.id);
      const free = loose.find(
        (each) =>
          !taken.has(each) &&
          (there
            ? each.lead === there.lead && each.plug.family !== there.plug.family
            : isFor(each, connector)),
      );
      if (free) taken.add(free);
      return { job: jobOf(job), own: { ...lacking(build, connector, free, there), isThere: true } };
    });
}

/** By the plug that lies loose, where there is one: its own, or the other end of the cable that is in there. */
function lacking(
  build: Build,
  { id: connector }: Connector,
  free: Pick<PowerPlug, 'lead' | 'plug'> | undefined,
  there: PowerPlug | undefined,
): OwnFault {
  if (!free) return { id: `off/${connector}`, name: `Nothing feeds ${connectorName(build, connector)}.` };
  const { lead, plug } = free;
  const off = plugOff(build, { lead: lead.id, plug: plug.id, connector });
  return there ? { ...off, name: `${leadName(build, lead.id)} is not in at the supply.` } : off;
}

/** Nothing at all arrives; of several connectors for the processor one is enough. */
function lacksPower({ job, pins }: InletFeed, inlets: readonly InletFeed[]): boolean {
  const isFed = (inlet: Pick<InletFeed, 'pins'>) => inlet.pins.some(({ fed }) => fed !== 'nothing');
  if (isFed({ pins })) return false;
  return job !== 'cpu-power' || !inlets.some((other) => other.job === job && isFed(other));
}

function isFor({ plug }: Pick<PowerPlug, 'plug'>, { family, grid }: Connector): boolean {
  return plug.family === family && plug.grid.rows === grid.rows && plug.grid.cols <= grid.cols;
}

function jobOf(job: Job): PowerJob {
  return JOBS.find((each) => each === job) ?? 'drive-power';
}
