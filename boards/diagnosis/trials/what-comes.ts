import type { Fault } from '../faults/fault';
import { OBSERVATIONS, type ObservationId } from '../observations/observations';
import { type Outcome, placeOf } from '../predict';
import { courseOf } from '../start-chain/course';
import type { Machine } from '../start-chain/machine';
import { shareIn, type Touched } from './causes-touched';
import type { Chances } from './trial';

/**
 * What a start shows after a change that takes some faults away: the trouble is gone with all of them, the
 * same with none, and with one of two what the other alone brings about.
 */
export function afterChange(faults: readonly Fault[], outcome: Outcome, touched: Touched): Chances {
  const shares = faults.map((fault) => shareIn(touched, fault));
  const [one = 0, other] = shares;
  if (other === undefined) return { gone: one, same: 1 - one };
  const [first, second] = outcome.parts;
  const chances = { gone: one * other, other: 0, same: (1 - one) * (1 - other) };
  const left = [
    { part: second, chance: one * (1 - other) },
    { part: first, chance: other * (1 - one) },
  ];
  for (const { part, chance } of left) {
    if (part === undefined || chance === 0) continue;
    const changed = changedBy(part, outcome);
    chances.other += chance * changed;
    chances.same += chance * (1 - changed);
  }
  return chances;
}

/** What is noticed at a light, a socket or the speaker of the case, and what is there in a sound machine too. */
export const AT_THE_LEADS: ReadonlySet<ObservationId> = new Set<ObservationId>([
  'standby-light',
  'plug-will-not-fit',
  'lead-too-short',
  'no-beep',
  'buzz',
  'power-light-dark',
  'power-light-dim',
  'power-light-flickers',
  'power-light-always',
  'drive-light-dark',
  'light-the-wrong-way',
  'remote-light-missing',
  'remote-dead',
  'usb-missing',
  'usb-unknown',
  'usb-device-killed',
  'usb-hot',
  'front-audio-missing',
  'front-audio-noise',
  'rear-not-muted',
  'rear-silent',
]);

/** What is noticed at the front USB sockets alone. */
export const AT_FRONT_USB_SOCKETS: ReadonlySet<ObservationId> = new Set<ObservationId>([
  'standby-light',
  'usb-missing',
  'usb-unknown',
  'usb-device-killed',
  'usb-hot',
]);

/** From which chance of a sign it is taken to be there. Our own judgement. */
const SHOWS_FROM = 0.2;

/** Whether a trouble could still be seen where nothing is to be noticed of some leads. */
export function showsWithout(hidden: ReadonlySet<ObservationId>, { end, yes }: Outcome): boolean {
  return (
    end !== 'runs' || OBSERVATIONS.some(({ id }) => !hidden.has(id) && (yes[placeOf(id)] ?? 0) >= SHOWS_FROM)
  );
}

/** How likely a machine with one fault left looks otherwise than with both. */
function changedBy(left: Machine, { end, manners }: Outcome): number {
  const all = manners.reduce((sum, { share }) => sum + share, 0);
  const otherwise = manners.reduce(
    (sum, { share, manner }) => sum + (courseOf(left, manner).end === end ? 0 : share),
    0,
  );
  // Where it ends alike one of two troubles has gone, and that is noticed as often as not.
  return end === 'runs' ? 0.5 : otherwise / all;
}

/** The same machine with something else about it: what comes of it beside what came before. */
export function compared(changed: Machine, { end, manners }: Outcome): Chances {
  const chances = { gone: 0, other: 0, same: 0 };
  const all = manners.reduce((sum, { share }) => sum + share, 0);
  for (const { share, manner } of manners) {
    const then = courseOf(changed, manner).end;
    chances[then === end ? 'same' : then === 'runs' ? 'gone' : 'other'] += share / all;
  }
  return chances;
}
