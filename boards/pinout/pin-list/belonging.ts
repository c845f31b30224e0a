import type { Job } from '../../signals/signal';
import type { SignalId } from '../../signals/signals';
import type { Said } from './meanings';
import { isGroundOf, jobOf, type Settling } from './settling';

/** What a pin is there for besides its signal. */
export interface Belonging {
  readonly belongsTo?: Job;
  readonly channel?: string;
}

/** Headers of one job, whose grounds and open pins all belong to it. */
const WHOLE: ReadonlySet<Job> = new Set<Job>([
  'usb2',
  'usb3',
  'usb-c',
  'ieee1394',
  'serial',
  'hd-audio',
  'ac97-audio',
  'fan',
  'speaker',
  'main-power',
  'card-power',
  'case-open',
  'sensor',
  'clear-settings',
  'key-lock',
  'sata-data',
  'drive-power',
]);

const WITH_PORTS: ReadonlySet<Job | undefined> = new Set<Job | undefined>(['usb2', 'usb3']);

/** Whose ground each pin is and which port it belongs to, as far as the header tells. */
export function belongings(pins: readonly Settling[]): ReadonlyMap<Settling, Belonging> {
  const whole = wholeJob(pins);
  const header = headerOf(pins);
  const ports = portsOf(pins, whole);
  return new Map(
    pins.map((pin) => {
      const belongsTo = jobOfGround(pin, header, whole);
      const channel = ports.get(pin);
      return [pin, { ...(belongsTo && { belongsTo }), ...(channel !== undefined && { channel }) }];
    }),
  );
}

/** The one job of the header; undefined where it has several. */
function wholeJob(pins: readonly Settling[]): Job | undefined {
  const jobs = new Set(pins.flatMap(({ said }) => jobOf(said) ?? []));
  // A header made for both kinds of audio lead has the presence pin of the other.
  if (jobs.has('ac97-audio') && jobs.size === 2) jobs.delete('hd-audio');
  const [job] = jobs;
  return jobs.size === 1 && job !== undefined && WHOLE.has(job) ? job : undefined;
}

const INPUTS: ReadonlySet<Said | undefined> = new Set<SignalId | undefined>([
  'power-switch-input',
  'reset-switch-input',
  'key-lock-input',
  'case-open-input',
  'sensor-input',
]);

interface Header {
  /** Every pin by its row and column. */
  readonly at: ReadonlyMap<string, Settling>;
  /** Jobs of which a pin is said to be the ground. */
  readonly grounded: ReadonlySet<Job | undefined>;
}

function headerOf(pins: readonly Settling[]): Header {
  return {
    at: new Map(pins.flatMap((pin) => (pin.cell ? [[pin.cell.join(), pin] as const] : []))),
    grounded: new Set(pins.flatMap(({ said }) => (said && isGroundOf(said) ? [jobOf(said)] : []))),
  };
}

function jobOfGround(pin: Settling, header: Header, whole: Job | undefined): Job | undefined {
  if (pin.said === undefined) return undefined;
  if (isGroundOf(pin.said)) return jobOf(pin.said);
  if (pin.said === 'no-connection') return whole;
  if (pin.said !== 'ground') return undefined;
  return whole ?? neighbour(pin, header);
}

/** The one input beside a ground in its row that has no ground of its own: 5 and 7, 6 and 8 of the panel. */
function neighbour({ cell }: Settling, { at, grounded }: Header): Job | undefined {
  if (cell === undefined) return undefined;
  const [row, col] = cell;
  const inputs = [col - 1, col + 1]
    .map((beside) => at.get(`${row},${beside}`)?.said)
    .filter((said) => INPUTS.has(said));
  const [only] = inputs;
  const job = inputs.length === 1 ? jobOf(only) : undefined;
  return grounded.has(job) ? undefined : job;
}

/** Ports as the words number them; the supply and ground of a row belong to the one port of its data lines. */
function portsOf(pins: readonly Settling[], whole: Job | undefined): ReadonlyMap<Settling, string> {
  const rowOf = ({ cell }: Settling) => cell?.[0];
  const rows = [...new Set(pins.flatMap((pin) => rowOf(pin) ?? []))];
  const first = pins.map(rowOf).find((row) => row !== undefined);
  const named = new Map(rows.map((row) => [row, portOfRow(pins.filter((pin) => rowOf(pin) === row))]));
  const ofRow = (row: number): string | undefined => {
    if (!WITH_PORTS.has(whole)) return undefined;
    const unnamed = [...named.values()].every((port) => port === undefined);
    return unnamed && rows.length === 2 ? (row === first ? 'A' : 'B') : named.get(row);
  };
  return new Map(
    pins.flatMap((pin): [Settling, string][] => {
      const { said, meant, cell } = pin;
      const isLine = WITH_PORTS.has(jobOf(said));
      if (cell === undefined || !(isLine || (said === 'ground' && WITH_PORTS.has(whole)))) return [];
      const port = meant?.port ?? ofRow(cell[0]);
      return port === undefined ? [] : [[pin, port]];
    }),
  );
}

function portOfRow(pins: readonly Settling[]): string | undefined {
  const ports = new Set(
    pins.flatMap(({ said, meant }) =>
      WITH_PORTS.has(jobOf(said)) && meant?.port !== undefined ? [meant.port] : [],
    ),
  );
  const [port] = ports;
  return ports.size === 1 ? port : undefined;
}
