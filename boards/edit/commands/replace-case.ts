import { z } from 'zod';
import { CaseSheetZ } from '../../document/case-sheet';
import { defineCommand } from '../definition';
import { reseat } from '../reseat';
import { soundBuild } from '../sound';

/** Puts another case sheet into the build. Plugs of leads that it has too stay where they still fit. */
export const replaceCase = defineCommand({
  name: 'replace-case',
  args: z.strictObject({ case: CaseSheetZ }),
  label: (_, args) => `Use the case ${args.case.name}`,
  apply: (build, args) => {
    const bare = soundBuild({ ...build, case: args.case, seats: [] });
    return bare.ok ? reseat(bare.value, build.seats) : bare;
  },
});
