import type { Build } from '../../document/build';
import type { Lead } from '../../document/lead';
import { unitName } from '../../document/names';
import { placeName } from '../../document/place-names';
import type { NoPassage } from '../fill/fill';
import { lengthWords, missingWords, spareWords } from '../fill/length-words';
import { plugLabel, spotName } from './end-names';
import { connectorAt } from './laying-ids';
import type { NotLaid } from './laying-of';
import type { RunVerdict } from './run-verdict';
import type { WayStep } from './way-steps';

/** How a run stands, in a few words. */
export function verdictWords(build: Build, verdict: RunVerdict): string {
  switch (verdict.kind) {
    case 'laid':
      return `laid, ${spareWords(verdict.spareMm)} to spare`;
    case 'too-short':
      return `too short by ${missingWords(verdict.byMm)}`;
    case 'barred':
      return `does not go through ${openingName(build, verdict.opening)}`;
    case 'crowded':
      return `crowded out: ${openingName(build, verdict.opening)} is overfull`;
    case 'open':
      return verdict.broken ? 'its way is gone' : 'no way yet';
    case 'not-laid':
      return NOT_LAID[verdict.problem.code];
  }
}

const NOT_LAID: Readonly<Record<NotLaid['code'], string>> = {
  'not-plugged': 'not plugged',
  'no-start': 'no beginning',
  'start-unknown': 'its beginning is gone',
  'no-board-place': 'the board has no place',
  'no-unit-place': 'a unit has no place',
  'same-place': 'both ends in one place',
};

/** What has to be known or done before a run can be laid. */
export function notLaidWords(build: Build, lead: Lead, problem: NotLaid): string {
  switch (problem.code) {
    case 'not-plugged':
      return `${plugLabel(lead, problem.plug)} of ${lead.name} sits nowhere yet. Place it in the Wire area; then its way can be found.`;
    case 'no-start':
      return `Nobody has said where ${lead.name} begins. Choose a place of the tray for it.`;
    case 'start-unknown':
      return `${lead.name} begins at “${problem.place}”, which the tray does not have. Choose another place.`;
    case 'no-board-place':
      return 'The tray has no place for the board yet. Say where its rear right corner lies.';
    case 'no-unit-place':
      return `Nobody has said where ${unitName(build, problem.unit)} sits. Choose a bay or another place of the tray for it.`;
    case 'same-place':
      return `Both ends of this run are in one place, so it needs no way. Check what its plugs sit on.`;
  }
}

/** Why an opening does not let a cable through, as the end of a sentence about the cable. */
export function passageWords(build: Build, opening: string, problem: NoPassage): string {
  const name = openingName(build, opening);
  switch (problem.code) {
    case 'too-narrow':
      return `${name} is ${lengthWords(problem.narrowMm)} wide where it is narrowest, the cable ${lengthWords(problem.diameterMm)} thick`;
    case 'too-full':
      return `alone it would fill ${atLeastPercent(problem.fill)} of ${name}, where one cable may fill ${percent(problem.limit)}`;
    case 'too-thick':
      return `behind ${name} there are ${lengthWords(problem.behindMm)} up to the side panel, and the cable is ${lengthWords(problem.diameterMm)} thick`;
    case 'too-stiff':
      return `its bend behind ${name} takes ${lengthWords(problem.neededMm)}, and there are ${lengthWords(problem.behindMm)} up to the side panel`;
  }
}

/** One piece of a way. */
export function stepWords(build: Build, step: WayStep): string {
  if (step.kind === 'through')
    return `Through ${openingName(build, step.opening)} to the ${step.to} of the tray`;
  const side = step.side === 'front' ? 'along the front' : 'behind the tray';
  const over = [step.from, step.to].some((end) => connectorAt(end) !== undefined) ? 'across the board' : side;
  return `From ${spotName(build, step.from)} ${over} to ${spotName(build, step.to)}, ${lengthWords(step.lengthMm)}`;
}

export function openingName(build: Build, id: string): string {
  const { tray } = build.case;
  return tray === undefined ? id : placeName(tray, id);
}

/** What is over a limit, rounded up, so that it does not read as the limit itself. */
export function atLeastPercent(share: number): string {
  return percent(Math.ceil(share * 100 - 1e-9) / 100);
}

/** "36 %". */
export function percent(share: number): string {
  return `${Math.round(share * 100)}\u00a0%`;
}
