import { useBuild, useSession } from '../../../workbench';
import { type ChosenWay, chosenWay } from './chosen-way';

/** The way of the current through what is chosen, in the state that the power bar shows. */
export function useChosenWay(): ChosenWay | null {
  const build = useBuild();
  const selection = useSession((session) => session.selection);
  const state = useSession((session) => session.machine);
  return chosenWay({ build, selection, state });
}
