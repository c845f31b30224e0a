import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { connectorOf, unitWith } from '../../document/lookup';
import { connectorName } from '../../document/names';
import { IdZ } from '../../document/text';
import { changeUnit } from '../change';
import { withoutChoices } from '../choices';
import { defineCommand } from '../definition';

/** Removes a connector from the board or its unit with what was chosen to go there, and takes off its plugs. */
export const removeConnector = defineCommand({
  name: 'remove-connector',
  args: z.strictObject({ connector: IdZ }),
  label: (build, { connector }) => `Remove ${connectorName(build, connector)}`,
  apply: (build, { connector: id }) => {
    const bare = { ...build, seats: build.seats.filter((seat) => seat.connector !== id) };
    const left = withoutChoices(bare, ({ kind, on }) => kind !== 'branch' && on === id);
    const others = <T extends { readonly id: string }>(all: readonly T[]) =>
      all.filter((each) => each.id !== id);
    const unit = unitWith(build, id);
    if (unit !== undefined)
      return changeUnit(left, unit.id, () => ok({ ...unit, connectors: others(unit.connectors) }));
    if (connectorOf(build.board, id) === undefined)
      return refuse({ code: 'unknown-connector', connector: id });
    return ok({ ...left, board: { ...build.board, connectors: others(build.board.connectors) } });
  },
});
