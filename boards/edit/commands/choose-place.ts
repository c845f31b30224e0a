import { ok, refuse } from '../../base/result';
import { LIMITS } from '../../document/limits';
import { leadName, unitName } from '../../document/names';
import { ChoiceZ } from '../../document/rating';
import { defineCommand } from '../definition';

/** Says where a drive or a fan goes, whatever the search would say; null leaves it to the search again. */
export const choosePlace = defineCommand({
  name: 'choose-place',
  args: ChoiceZ.extend({ on: ChoiceZ.shape.on.nullable() }),
  label: (build, { kind, of, on }) => {
    const name = kind === 'header' ? leadName(build, of) : unitName(build, of);
    return on === null ? `Leave open where ${name} goes` : `Choose where ${name} goes`;
  },
  apply: (build, { kind, of, on }) => {
    const { choices = [], ...rest } = build;
    const others = choices.filter((choice) => choice.kind !== kind || choice.of !== of);
    if (on !== null && others.length >= LIMITS.choices)
      return refuse({ code: 'full', what: 'choices', limit: LIMITS.choices });
    const next = on === null ? others : [...others, { kind, of, on }];
    return ok(next.length === 0 ? rest : { ...rest, choices: next });
  },
});
