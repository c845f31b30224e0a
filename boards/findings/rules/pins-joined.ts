import { meetingOf, pinRefOf } from '../about';
import { across } from '../across';
import { GROUNDED_BY_CABLE } from '../fed-pins';
import type { FindingOf, Severity } from '../finding';
import type { FindingData } from '../finding-data';
import { joinedByCables } from '../joined-by-cables';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';
import type { OnPin } from '../seated-part';

/**
 * A cable with plugs at its ends must not join a supply to ground, to another supply or to a signal, be it by
 * one wire or by several that meet in a hole.
 *
 * Good: an extension with one end on the board.
 * Bad: both ends on the board, one on +5 V and one on ground: a short. A splitter with both branches on fan
 * headers, one of them one pin off: +12 V goes to ground through the wires that meet in its loose plug.
 */
export const pinsJoined: Rule<'pins-joined'> = {
  id: 'pins-joined',
  source: 'common practice, no source',
  explains: [],
  check: (context) =>
    joinedByCables(context).flatMap((pins) =>
      mustNotMeet(pins).map(({ first, second, severity }): FindingOf<'pins-joined'> => {
        const data: FindingData['pins-joined'] = { first: meetingOf(first), second: meetingOf(second) };
        return {
          code: 'pins-joined',
          severity,
          leads: [first.joint.lead.id],
          pins: [pinRefOf(first), pinRefOf(second)],
          data,
          remedies: remediesFor(context, data.second.plug),
        };
      }),
    ),
};

interface Pair {
  readonly first: OnPin;
  readonly second: OnPin;
  readonly severity: Severity;
}

/** The pairs among joined pins that do harm, dangers first; none between two pins that are both told of already. */
function mustNotMeet(pins: readonly OnPin[]): readonly Pair[] {
  const pairs = pins.flatMap((first, at) =>
    pins.slice(at + 1).flatMap((second): readonly Pair[] => {
      const severity = severityOf(first, second);
      return severity ? [{ first, second, severity }] : [];
    }),
  );
  const told = new Set<OnPin>();
  return [...pairs.filter(isDanger), ...pairs.filter((pair) => !isDanger(pair))].filter(
    ({ first, second }) => {
      const isNew = !told.has(first) || !told.has(second);
      told.add(first).add(second);
      return isNew;
    },
  );
}

function isDanger({ severity }: Pair): boolean {
  return severity === 'danger';
}

function severityOf(first: OnPin, second: OnPin): Severity | undefined {
  const { kind } = across(first, second);
  if (kind === 'nothing' || kind === 'feed-and-sink') return undefined;
  if (kind === 'input-and-ground' && isMeant(first, second)) return undefined;
  // A supply there is an order, not a short: drive-held-off tells it.
  if ([first, second].some(({ id }) => id === 'drive-power-disable')) return undefined;
  return kind === 'input-and-ground' || kind === 'feed-and-ground' ? 'fault' : 'danger';
}

/** So a card knows what is plugged in, and a drive when to spin up. */
function isMeant(...ends: readonly OnPin[]): boolean {
  return ends.some(({ id }) => GROUNDED_BY_CABLE.includes(id));
}
