import type { Build } from '../document/build';
import type { PlaceChoice } from '../document/rating';

/** The build without the choices that are about what has gone: its id may be given again, to something else. */
export function withoutChoices(build: Build, isGone: (choice: PlaceChoice) => boolean): Build {
  const { choices = [], ...rest } = build;
  const kept = choices.filter((choice) => !isGone(choice));
  if (kept.length === choices.length) return build;
  return kept.length === 0 ? rest : { ...rest, choices: kept };
}
