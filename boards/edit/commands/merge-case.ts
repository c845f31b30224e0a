import { z } from 'zod';
import { refuse } from '../../base/result';
import { CaseSheetZ } from '../../document/case-sheet';
import { referenceProblems } from '../../document/check/references';
import { ChoicesZ, takeOf } from '../compare/choices';
import { compareCases } from '../compare/compare-cases';
import { mergeCases } from '../compare/merge-cases';
import { defineCommand } from '../definition';
import { reseat } from '../reseat';
import { soundBuild } from '../sound';

/** Takes over from another sheet of the case what was chosen of their differences, in one step. */
export const mergeCase = defineCommand({
  name: 'merge-case',
  args: z.strictObject({ case: CaseSheetZ, choices: ChoicesZ }),
  label: (_, args) => `Take over from the case sheet ${args.case.name}`,
  apply: (build, args) => {
    const unsound = referenceProblems(args.case);
    if (unsound.fields.length > 0) return refuse({ code: 'invalid', ...unsound });
    const elsewhere = build.extras.map(({ id }) => id);
    const merged = mergeCases(compareCases(build.case, args.case), takeOf(args.choices), elsewhere);
    if (!merged.ok) return merged;
    const bare = soundBuild({ ...build, case: merged.value, seats: [] });
    return bare.ok ? reseat(bare.value, build.seats) : bare;
  },
});
