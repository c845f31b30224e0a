import type { LeadCable } from '../../../../boards/document/cable';
import type { Lead } from '../../../../boards/document/lead';
import { type PlugRef, samePlug } from '../../../../boards/document/lookup';
import type { Cable, Laying } from '../../../../boards/routing/fill/laying';
import { asLaid, chosenPaths, type LaidRun, routeAlong } from '../../../../boards/routing/laid/as-laid';
import { socketId } from '../../../../boards/routing/laid/laying-ids';
import { pathOnTo, wayBegun } from '../../../../boards/routing/laid/way-choosing';
import type { Route } from '../../../../boards/routing/search/reach';
import { doCommand } from '../../../do-command';
import type { TrayPart, WayDraft } from '../../../store/session';
import type { Workbench } from '../../../workbench';

type Bench = Pick<Workbench, 'editor' | 'session'>;

export function refOf({ lead, run }: LaidRun): PlugRef {
  return { lead: lead.id, plug: run.to };
}

/** Lays a run along a way. */
export function takeWay(bench: Bench, run: LaidRun, route: Route): boolean {
  const paths = [...chosenPaths(route)];
  return doCommand(bench, { name: 'lay-runs', args: { routes: [{ ...refOf(run), paths }], off: [] } });
}

export function takeOff(bench: Bench, run: LaidRun): boolean {
  return doCommand(bench, { name: 'lay-runs', args: { routes: [], off: [refOf(run)] } });
}

export function pin(bench: Bench, run: LaidRun, pinned: boolean): boolean {
  return doCommand(bench, { name: 'pin-run', args: { ...refOf(run), pinned } });
}

export function measure(bench: Bench, lead: Lead, cable: LeadCable | null): boolean {
  return doCommand(bench, { name: 'measure-lead', args: { lead: lead.id, cable } });
}

/** The run that a way is being chosen for, on the tray as it is. */
function drafted(
  bench: Bench,
):
  | { readonly laying: Laying; readonly run: LaidRun; readonly cable: Cable; readonly draft: WayDraft }
  | undefined {
  const build = bench.editor.getState().open?.history.present;
  const { wayDraft: draft } = bench.session.getState();
  const laid = build && asLaid(build);
  if (laid === undefined || draft === null) return undefined;
  const run = laid.runs.find((each) => samePlug(refOf(each), draft.plug));
  return run?.cable && { laying: laid.laying, run, cable: run.cable, draft };
}

/** Begins to choose the way of a run place by place. */
export function beginWay({ session }: Bench, run: LaidRun): void {
  session.getState().draftWay({ plug: refOf(run), paths: [] });
}

/** Goes on along a path; at the far end of the cable the way is taken. */
export function goAlong(bench: Bench, path: string): void {
  const found = drafted(bench);
  if (found === undefined) return;
  const { laying, run, cable, draft } = found;
  const paths = [...draft.paths, path];
  const begun = wayBegun(laying, cable, paths);
  if (begun === undefined) return;
  if (!begun.done) {
    bench.session.getState().draftWay({ ...draft, paths });
    return;
  }
  const route = routeAlong(laying, cable, chosenPaths({ paths }));
  bench.session.getState().draftWay(null);
  if (route) takeWay(bench, run, route);
}

/** One step back. */
export function goBack({ session }: Bench): void {
  const { wayDraft, draftWay } = session.getState();
  if (wayDraft) draftWay({ ...wayDraft, paths: wayDraft.paths.slice(0, -1) });
}

/**
 * Goes on to a place that was pressed on the map. True while a way is being chosen: then a press chooses
 * nothing else.
 */
export function goOnTo(bench: Bench, target: TrayPart | { readonly connector: string } | null): boolean {
  const found = drafted(bench);
  if (found === undefined) return false;
  const { laying, cable, draft } = found;
  const begun = wayBegun(laying, cable, draft.paths);
  if (target === null || begun === undefined) return true;
  const onPath = 'kind' in target && target.kind === 'path' ? target.id : undefined;
  const place = 'connector' in target ? socketId(target.connector) : target.id;
  const path = begun.next.find((each) => each.path === onPath)?.path ?? pathOnTo(begun, place);
  if (path !== undefined) goAlong(bench, path);
  else
    bench.session
      .getState()
      .tell('No path leads there from where the way has come to. Choose a place that is marked.');
  return true;
}
