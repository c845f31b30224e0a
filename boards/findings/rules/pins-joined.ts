import type { Wire } from '../../document/lead';
import { meetingOf, pinRefOf } from '../about';
import { across } from '../across';
import { GROUNDED_BY_CABLE } from '../fed-pins';
import type { FindingOf } from '../finding';
import { remediesFor } from '../remedies';
import type { Rule } from '../rule';
import { type OnPin, onPin } from '../seated-part';

/**
 * A cable with a plug at both ends must not join a supply to ground, to another supply or to a signal.
 *
 * Good: an extension with one end on the board.
 * Bad: both ends on the board, one on +5 V and one on ground: a short.
 */
export const pinsJoined: Rule<'pins-joined'> = {
  id: 'pins-joined',
  source: 'common practice, no source',
  explains: [],
  check: (context) => {
    const ends = new Map<Wire, OnPin[]>();
    for (const joint of context.joints) {
      if (joint.part || !joint.pin) continue;
      ends.set(joint.wire, [...(ends.get(joint.wire) ?? []), onPin(joint, joint.pin)]);
    }
    return [...ends.values()].flatMap(([first, second]): readonly FindingOf<'pins-joined'>[] => {
      if (!first || !second) return [];
      const { kind } = across(first, second);
      if (kind === 'nothing' || kind === 'feed-and-sink') return [];
      if (kind === 'input-and-ground' && isMeant(first, second)) return [];
      // A supply there is an order, not a short: drive-held-off tells it.
      if ([first, second].some(({ id }) => id === 'drive-power-disable')) return [];
      return [
        {
          code: 'pins-joined',
          severity: kind === 'input-and-ground' || kind === 'feed-and-ground' ? 'fault' : 'danger',
          leads: [first.joint.lead.id],
          pins: [pinRefOf(first), pinRefOf(second)],
          data: { first: meetingOf(first), second: meetingOf(second) },
          remedies: remediesFor(context, meetingOf(second).plug),
        },
      ];
    });
  },
};

/** So a card knows what is plugged in, and a drive when to spin up. */
function isMeant(...ends: readonly OnPin[]): boolean {
  return ends.some(({ id }) => GROUNDED_BY_CABLE.includes(id));
}
