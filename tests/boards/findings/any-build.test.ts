import fc from 'fast-check';
import { expect, test } from 'vitest';
import { leadOf } from '../../../boards/document/lookup';
import { applyCommand } from '../../../boards/edit/apply';
import { findingId } from '../../../boards/findings/finding';
import { findingsOf } from '../../../boards/findings/findings';
import { wordsOf } from '../../../boards/findings/words';
import { arbitraryBuild } from '../arbitrary-build';

const SEED = 20_261_125;

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
