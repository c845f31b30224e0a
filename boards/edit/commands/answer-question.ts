import { z } from 'zod';
import { ok, refuse } from '../../base/result';
import { OBSERVATIONS, observationNamed } from '../../diagnosis/observations/observations';
import { nearestOf } from '../../document/problem/nearest';
import { CodeZ, DayZ } from '../../document/text';
import { countsFrom, logOf } from '../../document/trouble';
import { defineCommand } from '../definition';
import { withLine, withLog } from '../log-lines';

/**
 * Answers a question about a machine that does not start, or takes the answer back with null. Of one question
 * one answer counts: another takes the place of the one before. Refuses a question that there is not.
 */
export const answerQuestion = defineCommand({
  name: 'answer-question',
  args: z.strictObject({
    observation: CodeZ,
    answer: z.enum(['yes', 'no']).nullable(),
    day: DayZ.optional(),
  }),
  label: (_, { observation, answer }) => {
    const asked = observationNamed(observation)?.question ?? observation;
    return answer === null ? `Take back the answer to “${asked}”` : `Answer “${asked}” with ${answer}`;
  },
  apply: (build, { observation: name, answer, day }) => {
    const observation = observationNamed(name);
    if (observation === undefined) {
      const nearest = nearestOf(
        OBSERVATIONS.map(({ id }) => id),
        name,
      );
      return refuse({
        code: 'unknown-observation',
        observation: name,
        ...(nearest !== undefined && { nearest }),
      });
    }
    const log = logOf(build);
    const from = countsFrom(log);
    const said = log.filter(
      (line, at) =>
        at >= from && line.kind === 'noticed' && observationNamed(line.what)?.id === observation.id,
    );
    const [only] = said;
    if (said.length === 1 && only?.kind === 'noticed' && only.answer === answer) return ok(build);
    const plain = withLog(
      build,
      log.filter((line) => !said.includes(line)),
    );
    if (answer === null) return ok(plain);
    return withLine(plain, { kind: 'noticed', what: observation.id, answer, ...(day && { day }) });
  },
});
