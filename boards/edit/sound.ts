import { ok, type Result, refuse } from '../base/result';
import type { Build } from '../document/build';
import { referenceProblems } from '../document/check/references';
import type { Refusal } from './refusal';

/** The build, when everything it names is there and nothing is there twice; otherwise what is not so. */
export function soundBuild(build: Build): Result<Build, Refusal> {
  const problems = referenceProblems(build);
  return problems.fields.length === 0 ? ok(build) : refuse({ code: 'invalid', ...problems });
}
