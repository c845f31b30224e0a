import fc from 'fast-check';
import type { Build } from '../../../boards/document/build';
import { leadsOf } from '../../../boards/document/lookup';
import { SOLDERED } from '../../../boards/document/power-job';
import { placesOf } from '../../../boards/fit/places';
import { type Bench, bench } from '../findings/harness';

const SUPPLIES = ['supply-fixed', 'supply-modular-ash', 'supply-modular-birch'] as const;
const DEVICES = ['drive', 'ssd', 'drive-peripheral', 'card-one-socket', 'card-two-sockets'] as const;
const HUBS = ['fan-hub-header', 'fan-hub-supply', 'sata-adapter'] as const;
const LEADS = [
  'fan-1x4',
  'fan-1x3',
  'fan-splitter',
  'sata-data-cable',
  'electronic-power-switch-1x2',
] as const;

interface Drawn {
  readonly supply: (typeof SUPPLIES)[number] | undefined;
  /** Whose box its cables are from besides. */
  readonly other: (typeof SUPPLIES)[number] | undefined;
  readonly devices: readonly (typeof DEVICES)[number][];
  readonly hubs: readonly (typeof HUBS)[number][];
  readonly leads: readonly (typeof LEADS)[number][];
  /** For each plug in turn, which of its places it gets; the first number too large leaves it loose. */
  readonly seats: readonly number[];
}

/** A board with its usual headers, and whatever units and leads, seated anyhow where they go in. */
export const anyMachine: fc.Arbitrary<Build> = fc
  .record<Drawn>({
    supply: fc.option(fc.constantFrom(...SUPPLIES), { nil: undefined }),
    other: fc.option(fc.constantFrom(...SUPPLIES), { nil: undefined }),
    devices: fc.array(fc.constantFrom(...DEVICES), { maxLength: 3 }),
    hubs: fc.array(fc.constantFrom(...HUBS), { maxLength: 2 }),
    leads: fc.array(fc.constantFrom(...LEADS), { maxLength: 4 }),
    seats: fc.array(fc.nat({ max: 12 }), { minLength: 24, maxLength: 24 }),
  })
  .map(madeOf);

function madeOf({ supply, other, devices, hubs, leads, seats }: Drawn): Build {
  let made: Bench = bench()
    .header('main-power-24', 'main')
    .header('cpu-power-2x4', 'cpu')
    .header('panel-2x5', 'panel')
    .header('fan-1x4', 'fan-cpu')
    .header('fan-1x4', 'fan-rear')
    .header('sata-data-7', 'sata-1')
    .header('sata-data-7', 'sata-2');
  if (supply) made = made.unit(supply, 'own');
  devices.forEach((type, at) => {
    made = made.unit(type, `device-${at}`);
  });
  hubs.forEach((type, at) => {
    made = made.unit(type, `hub-${at}`);
  });
  leads.forEach((type, at) => {
    made = made.lead(type, `lead-${at}`);
  });
  if (other) {
    const { extras } = bench().unit(other, 'other').build;
    made = made.with({ extras: [...made.build.extras, ...extras.filter(isLoose)] });
  }
  const free = leadsOf(made.build).flatMap((lead) =>
    lead.plugs.filter(({ family }) => family !== SOLDERED).map((plug) => ({ lead: lead.id, plug: plug.id })),
  );
  let build = made.build;
  for (const [at, plug] of free.entries()) {
    const place = placesOf(build, plug)[seats[at % seats.length] ?? 0];
    if (place) build = { ...build, seats: build.seats.concat(place) };
  }
  return build;
}

function isLoose({ plugs }: Build['extras'][number]): boolean {
  return plugs.every(({ family }) => family !== SOLDERED);
}
