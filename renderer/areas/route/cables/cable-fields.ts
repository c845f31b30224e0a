import { ok, type Result } from '../../../../boards/base/result';
import type { Mm } from '../../../../boards/base/units';
import type { Build } from '../../../../boards/document/build';
import type { LeadCable, Run } from '../../../../boards/document/cable';
import type { Lead } from '../../../../boards/document/lead';
import { placeName, placesOf } from '../../../../boards/document/place-names';
import { hasPaths } from '../../../../boards/document/tray-places';
import { endName, plugLabel } from '../../../../boards/routing/laid/end-names';
import { readFigure } from '../../../words/figure-words';
import type { LengthBounds } from '../../../words/length-words';

export const THICKNESS_BOUNDS: LengthBounds = { leastMm: 0.1, mostMm: 100 };
export const BEND_BOUNDS: LengthBounds = { leastMm: 0.1, mostMm: 500 };
export const CABLE_LENGTH_BOUNDS: LengthBounds = { leastMm: 1, mostMm: 20_000 };

/** What most cables are left at each end. Our own judgement. */
const USUAL_SLACK_MM: Mm = 20;

/** Slack may be nothing at all. */
export function readSlack(typed: string): Result<Mm, string> {
  const slack = readFigure(typed, {
    mayBe: (value) => value >= 0 && value <= 1_000,
    expected: 'Type millimetres, from 0 to 1000.',
  });
  return slack.ok ? ok(Math.round(slack.value * 100) / 100) : slack;
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

/** What is measured of a lead first; a length for each of its pieces, by the plug at the far end of it. */
interface FirstMeasured {
  readonly diameterMm: Mm | undefined;
  readonly lengthsMm: ReadonlyMap<string, Mm>;
  /** Where it begins; empty where nobody has said. */
  readonly start: string;
}

/** The pieces of a lead that are measured: one to every plug from where it begins, or from the plug before. */
export function firstPieces(lead: Lead): readonly Omit<Run, 'lengthMm'>[] {
  const ids = lead.plugs.map(({ id }) => id);
  if (beginsAtPart(lead)) return ids.map((to) => ({ to }));
  return ids.flatMap((to, at) => {
    const from = ids[at - 1];
    return from === undefined ? [] : [{ from, to }];
  });
}

/** A cable as it is first measured; undefined while a measure of it is missing: no length is taken for another. */
export function firstCable(
  lead: Lead,
  { diameterMm, lengthsMm, start }: FirstMeasured,
): LeadCable | undefined {
  const pieces = firstPieces(lead);
  const runs = pieces.flatMap((piece): readonly Run[] => {
    const lengthMm = lengthsMm.get(piece.to);
    return lengthMm === undefined ? [] : [{ ...piece, lengthMm }];
  });
  if (diameterMm === undefined || runs.length < pieces.length) return undefined;
  return { diameterMm, slackMm: USUAL_SLACK_MM, ...(start !== '' && { start }), runs };
}

/** What the line for the length of a piece is called. */
export function lengthLabel(build: Build, lead: Lead, { from, to }: Pick<Run, 'from' | 'to'>): string {
  const begin = from === undefined ? 'there' : plugLabel(lead, from);
  return `Length from ${begin} to ${endName(build, lead, to)}, mm`;
}
