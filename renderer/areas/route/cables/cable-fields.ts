import { ok, type Result, refuse } from '../../../../boards/base/result';
import type { Mm } from '../../../../boards/base/units';
import type { Build } from '../../../../boards/document/build';
import type { LeadCable, Run } from '../../../../boards/document/cable';
import type { Lead } from '../../../../boards/document/lead';
import { placeName, placesOf } from '../../../../boards/document/place-names';
import { hasPaths } from '../../../../boards/document/tray-places';
import type { LengthBounds } from '../../../words/length-words';

export const THICKNESS_BOUNDS: LengthBounds = { leastMm: 0.1, mostMm: 100 };
export const BEND_BOUNDS: LengthBounds = { leastMm: 0.1, mostMm: 500 };
export const CABLE_LENGTH_BOUNDS: LengthBounds = { leastMm: 1, mostMm: 20_000 };

/** What most cables are left at each end. Our own judgement. */
const USUAL_SLACK_MM: Mm = 20;

/** Slack may be nothing at all. */
export function readSlack(typed: string): Result<Mm, string> {
  const slack = Number(typed.trim().replace(',', '.'));
  if (typed.trim() !== '' && slack >= 0 && slack <= 1_000) return ok(Math.round(slack * 100) / 100);
  return refuse('Type millimetres, from 0 to 1000.');
}

/** Places where a lead can begin. */
export function startOptions({
  case: { tray },
}: Build): readonly { readonly id: string; readonly label: string }[] {
  const places =
    tray === undefined ? [] : placesOf(tray).filter(({ kind }) => hasPaths(kind) && kind !== 'opening');
  return [
    { id: '', label: 'not said yet' },
    ...places.map(({ id }) => ({ id, label: tray === undefined ? id : placeName(tray, id) })),
  ];
}

/** True for a lead that begins at a part, as the buttons of a case do, and not at a plug. */
export function beginsAtPart({ parts, plugs }: Lead): boolean {
  return parts.length > 0 || plugs.length === 1;
}

/** A cable as it is first measured: a run to every plug from where it begins, or from the plug before. */
export function firstCable(lead: Lead, diameterMm: Mm, lengthMm: Mm, start: string | undefined): LeadCable {
  const ids = lead.plugs.map(({ id }) => id);
  const fromPart = beginsAtPart(lead);
  const runs = ids.flatMap((to, at): readonly Run[] => {
    if (fromPart) return [{ to, lengthMm }];
    const from = ids[at - 1];
    return from === undefined ? [] : [{ from, to, lengthMm }];
  });
  return { diameterMm, slackMm: USUAL_SLACK_MM, ...(start !== undefined && { start }), runs };
}
