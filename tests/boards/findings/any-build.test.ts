import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leadOf } from '../../../boards/document/lookup';
import { UNIT_KINDS, type Unit } from '../../../boards/document/unit';
import { applyCommand } from '../../../boards/edit/apply';
import { findingId } from '../../../boards/findings/finding';
import { findingsOf } from '../../../boards/findings/findings';
import { wordsOf } from '../../../boards/findings/words';
import { arbitraryBuild } from '../arbitrary-build';

const SEED = 20_261_125;

/** As they are added: with a name, and nothing described yet. */
const BLANKS: readonly Unit[] = UNIT_KINDS.flatMap((kind) =>
  [1, 2].map((at): Unit => ({ id: `blank-${kind}-${at}`, name: 'Bench', kind, connectors: [] })),
);

test('two units of a kind of which nothing is described are two findings, each with an id of its own', () => {
  fc.assert(
    fc.property(arbitraryBuild, (build) => {
      const ids = findingsOf({ ...build, units: [...(build.units ?? []), ...BLANKS] }).map(findingId);
      expect(ids.filter((id) => id.includes('blank-supply')).length).toBe(2);
      expect(new Set(ids).size).toBe(ids.length);
    }),
    { seed: SEED, numRuns: 20 },
  );
});

test('any build can be checked: words for all, ids for all, leads that exist, remedies that are not refused', () => {
  let found = 0;
  fc.assert(
    fc.property(arbitraryBuild, (build) => {
      const findings = findingsOf(build);
      const ids = findings.map(findingId);
      expect(new Set(ids).size).toBe(ids.length);
      for (const finding of findings) {
        found += 1;
        const { title, reason } = wordsOf(finding, build);
        expect(title).toMatch(/\.$/);
        expect(reason).not.toMatch(/undefined|NaN/);
        expect(finding.leads.filter((lead) => leadOf(build, lead) === undefined)).toEqual([]);
        for (const { command } of finding.remedies)
          if (command) expect(applyCommand(build, command)).toMatchObject({ ok: true });
      }
    }),
    { seed: SEED, numRuns: 60 },
  );
  expect(found).toBeGreaterThan(100);
});
