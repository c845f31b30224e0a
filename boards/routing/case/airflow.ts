import type { FanPlace } from '../../document/tray';

/** Makers' figures are not closer than this part of the larger sum (common practice, no source). */
const AS_GOOD_AS_EVEN = 0.1;

/** The fans of one direction. */
interface Stream {
  /** Ids of fan places, in the tray's order. */
  readonly fans: readonly string[];
  /** What their makers say they move together; absent where one says nothing. */
  readonly flowM3PerHour?: number;
}

/** What more of is moved; `unknown` where the flow of a fan or a way that it blows is not known. */
type Balance = 'more-in' | 'more-out' | 'even' | 'unknown';

/** What the fans of a case do together, as far as it is known. */
export interface Airflow {
  readonly intake: Stream;
  readonly exhaust: Stream;
  /** Places with no fan, or with one that nobody has looked at. */
  readonly unseen: readonly string[];
  readonly balance: Balance;
}

/** Which way the fan blows: air leaves on the side with the struts (common practice, no source). */
export function directionOf({ strutsFace }: FanPlace): 'intake' | 'exhaust' | undefined {
  if (strutsFace === undefined) return undefined;
  return strutsFace === 'inward' ? 'intake' : 'exhaust';
}

/** Intake against exhaust. Makers measure with nothing in the way: in a case less is moved. */
export function airflowOf(fans: readonly FanPlace[]): Airflow {
  const intake = streamOf(fans.filter((fan) => directionOf(fan) === 'intake'));
  const exhaust = streamOf(fans.filter((fan) => directionOf(fan) === 'exhaust'));
  const unseen = fans.filter((fan) => directionOf(fan) === undefined).map(({ id }) => id);
  const balance = unseen.length > 0 ? 'unknown' : balanceOf(intake.flowM3PerHour, exhaust.flowM3PerHour);
  return { intake, exhaust, unseen, balance };
}

function streamOf(fans: readonly FanPlace[]): Stream {
  const ids = fans.map(({ id }) => id);
  let sum = 0;
  for (const { flowM3PerHour } of fans) {
    if (flowM3PerHour === undefined) return { fans: ids };
    sum += flowM3PerHour;
  }
  return { fans: ids, flowM3PerHour: sum };
}

function balanceOf(inward: number | undefined, outward: number | undefined): Balance {
  // Without any fan there is nothing to weigh.
  if (inward === undefined || outward === undefined || inward + outward === 0) return 'unknown';
  if (Math.abs(inward - outward) <= AS_GOOD_AS_EVEN * Math.max(inward, outward)) return 'even';
  return inward > outward ? 'more-in' : 'more-out';
}
