import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import type { Build } from '../../document/build';
import { unitOf, unitsOf } from '../../document/lookup';
import { unitName } from '../../document/names';
import { IdZ } from '../../document/text';
import { withoutChoices } from '../choices';
import { defineCommand } from '../definition';

/** Removes a unit with its connectors and what was chosen for it, and takes off its plugs. Its cables stay on the shelf. */
export const removeUnit = defineCommand({
  name: 'remove-unit',
  args: z.strictObject({ unit: IdZ }),
  label: (build, { unit }) => `Remove ${unitName(build, unit)}`,
  apply: (build, { unit: id }) => {
    const unit = unitOf(build, id);
    if (unit === undefined) return refuse({ code: 'unknown-unit', unit: id });
    const gone = new Set(unit.connectors.map((connector) => connector.id));
    const units = unitsOf(build).filter((each) => each !== unit);
    const { units: _, ...without } = build;
    const left: Build = { ...without, seats: build.seats.filter(({ connector }) => !gone.has(connector)) };
    const next = withoutChoices(left, ({ kind, of, on }) => (kind === 'header' ? gone.has(on) : of === id));
    return ok(units.length === 0 ? next : { ...next, units });
  },
});
