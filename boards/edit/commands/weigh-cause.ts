import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { CAUSES, isCause } from '../../diagnosis/faults/causes';
import { LIMITS } from '../../document/limits';
import { oftenWords, PriorZ } from '../../document/prior';
import { nearestOf } from '../../document/problem/nearest';
import { CodeZ } from '../../document/text';
import { defineCommand } from '../definition';

/**
 * Says how often a cause of trouble is met here, against what is usual; null says that it is as usual. Refuses
 * a cause that there is not.
 */
export const weighCause = defineCommand({
  name: 'weigh-cause',
  args: z.strictObject({ cause: CodeZ, factor: PriorZ.shape.factor.nullable() }),
  label: (_, { cause, factor }) => {
    const words = isCause(cause) ? CAUSES[cause] : cause;
    return `Count as met ${oftenWords(factor ?? 1)}: ${words}`;
  },
  apply: (build, { cause, factor }) => {
    if (!isCause(cause)) {
      const nearest = nearestOf(Object.keys(CAUSES), cause);
      return refuse({ code: 'unknown-cause', cause, ...(nearest !== undefined && { nearest }) });
    }
    const { priors = [], ...plain } = build;
    const others = priors.filter((prior) => prior.cause !== cause);
    const before = priors.filter((prior) => prior.cause === cause);
    if (before.length <= 1 && (before[0]?.factor ?? null) === factor) return ok(build);
    if (factor === null) return ok(others.length === 0 ? plain : { ...plain, priors: others });
    if (others.length >= LIMITS.priors) return refuse({ code: 'full', what: 'causes', limit: LIMITS.priors });
    return ok({ ...plain, priors: [...others, { cause, factor }] });
  },
});
