import { RUNNING } from '../../circuit/machine-state';
import { portSupplyOf } from '../../circuit/readings/ports';
import { unitsOf } from '../../document/lookup';
import type { Unit } from '../../document/unit';
import { pinRefOf } from '../about';
import type { CheckContext } from '../context';
import type { FindingOf } from '../finding';
import type { Rule } from '../rule';
import type { SeatedPart } from '../seated-part';
import { feedHubText } from '../words/remedies';

/**
 * A hub has nothing of its own to give: it needs a header or the supply before it.
 *
 * Good: its tail on a fan header, or its power socket fed by the supply.
 * Bad: fans on a hub whose own plug lies loose: none of them would turn.
 */
export const hubUnfed: Rule<'hub-unfed'> = {
  id: 'hub-unfed',
  source: 'common practice, no source',
  explains: [],
  check: (context) =>
    unitsOf(context.build)
      .filter(({ kind }) => kind === 'hub')
      .flatMap((hub): readonly FindingOf<'hub-unfed'>[] => {
        const still = context.parts.filter((part) => isOn(part, hub) && isStill(context, part));
        if (still.length === 0) return [];
        return [
          {
            code: 'hub-unfed',
            severity: 'fault',
            leads: still.map(({ lead }) => lead.id),
            pins: still.flatMap(({ legs }) => legs.map(pinRefOf)),
            data: { unit: hub.id, fans: still.length },
            remedies: [{ text: feedHubText(hub.name) }],
          },
        ];
      }),
};

function isOn({ legs, kind }: SeatedPart, { connectors }: Unit): boolean {
  return (
    kind.job === 'fan' && legs.some(({ joint }) => connectors.some(({ id }) => id === joint.connector.id))
  );
}

/** Less than this moves no fan: half of what any needs to start. Common practice, no source. */
const LEAST_VOLTS = 2;

function isStill({ circuit }: CheckContext, { lead, part }: SeatedPart): boolean {
  const volts = portSupplyOf(circuit, lead.id, part)?.volts(RUNNING);
  return volts === undefined || Math.abs(volts.usual) < LEAST_VOLTS;
}
