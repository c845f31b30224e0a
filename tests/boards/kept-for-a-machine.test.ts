import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainFaultsOf } from '../../boards/diagnosis/faults/faults';
import type { Build } from '../../boards/document/build';
import { findingsOf } from '../../boards/findings/findings';
import { meterStepsOf } from '../../boards/handover/meter/meter-steps';
import { assignmentsOf } from '../../boards/routing/assign/assignments';
import { arbitraryBuild } from './arbitrary-build';
import { EXAMPLES } from './findings/examples';

/** Any machine, and one for every finding that there is. */
const machines = fc.oneof(
  arbitraryBuild,
  fc.constantFrom(...Object.values(EXAMPLES).map(({ build }) => build)),
);

/** The wiring, the outline and the tray of one machine in another. A copy, so that nothing is known of it. */
function inAnother(build: Build, other: Build): Build {
  const { extras, seats, units } = build;
  const { connectors, outline } = build.board;
  const { leads, tray } = build.case;
  const { units: _, ...rest } = other;
  const { tray: __, ...bare } = other.case;
  return structuredClone({
    ...{ ...rest, extras, seats, ...(units && { units }) },
    board: { ...other.board, connectors, outline },
    case: { ...bare, leads, ...(tray && { tray }) },
  });
}

/** That with the whole board and the choices of the one. */
function withChoices(build: Build, other: Build): Build {
  const { choices: _, ...rest } = inAnother(build, other);
  const { board, choices } = build;
  return structuredClone({ ...rest, board, ...(choices && { choices }) });
}

// What is worked out once is shown again for as long as what it depends on is the same: were it to depend on anything
// else, the window would go on showing what is no longer true.
describe('what is kept for a machine depends on nothing else that a build has', () => {
  it.each([
    ['findings', findingsOf, inAnother],
    ['faults that it may have', plainFaultsOf, inAnother],
    ['what a meter has to show', meterStepsOf, inAnother],
    ['places of drives and fans', assignmentsOf, withChoices],
  ] as const)('%s', (_, worked, crossed) => {
    let some = 0;
    fc.assert(
      fc.property(machines, machines, (build, other) => {
        const kept = worked(build);
        expect(worked(crossed(build, other))).toEqual(kept);
        if (!Array.isArray(kept) || kept.length > 0) some += 1;
      }),
      { seed: 20_261_127, numRuns: 100 },
    );
    expect(some).toBeGreaterThan(15);
  });
});
