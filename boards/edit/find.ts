import { ok, type Result, refuse } from '../base/result';
import type { Build, Seat } from '../document/build';
import type { Plug } from '../document/lead';
import { leadOf, type PlugRef, plugKey, seatOf } from '../document/lookup';
import type { Refusal } from './refusal';

/** A plug of a build, or which part of its name is not there. */
export function findPlug(build: Build, ref: PlugRef): Result<Plug, Refusal> {
  const lead = leadOf(build, ref.lead);
  if (lead === undefined) return refuse({ code: 'unknown-lead', lead: ref.lead });
  const plug = lead.plugs.find(({ id }) => id === ref.plug);
  return plug === undefined ? refuse({ code: 'unknown-plug', lead: ref.lead, plug: ref.plug }) : ok(plug);
}

/** Refuses the first of these plugs that is not there, or is named a second time. */
export function findPlugsOnce(build: Build, refs: readonly PlugRef[]): Result<null, Refusal> {
  const seen = new Set<string>();
  for (const ref of refs) {
    const plug = findPlug(build, ref);
    if (!plug.ok) return plug;
    if (seen.has(plugKey(ref))) return refuse({ code: 'plug-twice', lead: ref.lead, plug: ref.plug });
    seen.add(plugKey(ref));
  }
  return ok(null);
}

/** Where a plug sits, or why there is no such place. */
export function findSeat(build: Build, ref: PlugRef): Result<Seat, Refusal> {
  const plug = findPlug(build, ref);
  if (!plug.ok) return plug;
  const seat = seatOf(build, ref);
  return seat === undefined ? refuse({ code: 'not-seated', lead: ref.lead, plug: ref.plug }) : ok(seat);
}
