import { useMemo } from 'react';
import type { ReasonedTrial } from '../../../../boards/diagnosis/log/reasoned-trials';
import type { Trial } from '../../../../boards/diagnosis/trials/trial';
import { useSession } from '../../../workbench';
import type { Diagnosis } from '../use-diagnosis';

/** A trial with what its results would say. */
export interface ShownTrial {
  readonly trial: Trial;
  readonly reasoned: ReasonedTrial;
}

/** The chosen trial while it may be made, otherwise the best one; undefined where there is none. */
export function useShownTrial({ next, trials }: Diagnosis): ShownTrial | undefined {
  const chosen = useSession((session) => session.trial);
  return useMemo(() => {
    const open = (next?.trials ?? []).filter(({ risk }) => risk === undefined);
    const reasoned = open.find(({ trial }) => trial === chosen) ?? open[0];
    const trial = trials.find(({ id }) => id === reasoned?.trial);
    return reasoned && trial && { trial, reasoned };
  }, [next, trials, chosen]);
}
