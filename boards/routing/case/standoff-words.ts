import { capital } from '../../base/capital';
import { listed } from '../../base/listed';
import type { Outline } from '../../document/outline';
import { placeName } from '../../document/place-names';
import type { Tray } from '../../document/tray';
import type { StandoffFinding } from './standoffs';

/** The published document that standoffs rest on. */
export const STANDOFF_SOURCE =
  'microATX Motherboard Interface Specification v1.2 (2004), page 10: at places not listed for a board, standoffs are removable or absent';

/** What a finding about standoffs says, and what to do. */
export function standoffWords(finding: StandoffFinding, outline: Outline, tray: Tray): string {
  switch (finding.code) {
    case 'short':
      return shortWords(finding, tray);
    case 'off': {
      const standoff = standoffName(finding.standoff, tray);
      const by = `${finding.byMm.toFixed(1)}\u00a0mm`;
      return `${capital(standoff)} is ${by} away from ${holeName(finding.hole, outline)}. Measure both again; leave it empty until the hole is seen right over it.`;
    }
    case 'unsure-hole':
      return `Published accounts do not agree on ${holeName(finding.hole, outline)}. Look through the hole of the board itself before ${standoffName(finding.standoff, tray)} is screwed in.`;
    case 'unsupported':
      return `${capital(holeName(finding.hole, outline))} has no standoff under it. The board may bend there when a plug is pushed on; hold it from below, and put nothing of metal there.`;
  }
}

function shortWords(
  { level, fixed, standoff }: Extract<StandoffFinding, { code: 'short' }>,
  tray: Tray,
): string {
  const name = standoffName(standoff, tray);
  if (level === 'doubt')
    return `No hole of the board lies over ${name}. Look that nothing is in that place: metal there would touch the underside of the board and short it.`;
  const why = `No hole of the board lies over ${name}: its metal would touch the underside and short it.`;
  return fixed
    ? `${why} It cannot be taken out, so this board does not go into this case; look into the manuals of both.`
    : `${why} Take the standoff out before the board goes in.`;
}

/** "standoff C": its name, with what it is where the name does not say so. */
export function standoffName(id: string, tray: Tray): string {
  const name = placeName(tray, id);
  return /standoff/iu.test(name) ? name : `standoff\u00a0${name}`;
}

/** "hole C", "holes C, F and H". */
export function holeNames(ids: readonly string[], outline: Outline): string {
  return `${ids.length === 1 ? 'hole' : 'holes'}\u00a0${listed(ids.map((id) => holeLabel(id, outline)))}`;
}

/** "hole C": by the letter that specifications give it. */
export function holeName(id: string, outline: Outline): string {
  return holeNames([id], outline);
}

function holeLabel(id: string, outline: Outline): string {
  return outline.holes?.find((each) => each.id === id)?.label ?? id;
}
