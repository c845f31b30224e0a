import { ok, type Result, refuse } from '../../boards/base/result';
import { CAUSES, isCause } from '../../boards/diagnosis/faults/causes';
import type { Build } from '../../boards/document/build';
import { FACTOR, type Prior } from '../../boards/document/prior';
import { nearestOf } from '../../boards/document/problem/nearest';

/** A build that weighs causes as the command line says, after what it says itself; or what was expected instead. */
export function weighedBuild(build: Build, priors: readonly string[]): Result<Build, string> {
  const found: Prior[] = [...(build.priors ?? [])];
  for (const text of priors) {
    const one = priorFrom(text);
    if (!one.ok) return one;
    found.push(one.value);
  }
  return ok(found.length === 0 ? build : { ...build, priors: found });
}

function priorFrom(text: string): Result<Prior, string> {
  const [name = '', number, ...more] = text.split('=');
  const cause = name.replaceAll('_', '-');
  if (number === undefined || more.length > 0)
    return refuse(`Expected a cause with a factor after “--prior”, as “coin-cell=3”, found “${text}”.`);
  if (!isCause(cause)) {
    const near = nearestOf(Object.keys(CAUSES), cause);
    return refuse(
      near === undefined
        ? `There is no cause “${name}”. There are: ${Object.keys(CAUSES).join(', ')}.`
        : `There is no cause “${name}”. Did you mean “${near}”?`,
    );
  }
  const factor = number.trim() === '' ? Number.NaN : Number(number);
  if (!(factor >= FACTOR.least && factor <= FACTOR.most))
    return refuse(
      `Expected a number from ${FACTOR.least} to ${FACTOR.most} after “${name}=”, found “${number}”: 3 is three times as often as usual.`,
    );
  return ok({ cause, factor });
}
