import type { Build } from '../../boards/document/build';
import { overhangWords, refusalWords } from '../../boards/fit/fit-words';
import { BesideLabel } from './beside-label';
import type { Ghost } from './in-hand';
import type { ViewHandle } from './view-handle';

const MOST_REASONS = 2;

interface FitLabelProps {
  readonly build: Build;
  readonly ghost: Ghost;
  readonly view: ViewHandle;
}

/** Why the plug in the hand cannot sit where it is. */
export function FitLabel({ build, ghost, view }: FitLabelProps) {
  return <BesideLabel lines={fitLabelWords(build, ghost)} around={ghost.around} view={view} kind="fit" />;
}

function fitLabelWords(build: Build, { fit }: Ghost): readonly string[] {
  if (fit.refusals.length > 0)
    return fit.refusals.slice(0, MOST_REASONS).map((refusal) => refusalWords(refusal, build));
  const overhang = overhangWords(fit.overhang);
  return overhang === '' ? [] : [overhang];
}
