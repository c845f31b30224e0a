import type { Build } from '../../document/build';
import type { Lead } from '../../document/lead';
import type { Tray } from '../../document/tray';
import { type Letters, printable } from '../page/letters';
import { printableSheet } from '../pinout/printable-sheet';

interface Printable {
  readonly build: Build;
  /** Whether any sign had to be replaced. */
  readonly replaced: boolean;
}

/** The build with every text of it as it can be printed. Ids and labels are plain letters already. */
export function printableBuild(build: Build, letters: Pick<Letters, 'has'>): Printable {
  const sheet = printableSheet(build.board, letters);
  let { replaced } = sheet;
  const shown = (text: string) => {
    const set = printable(text, letters);
    if (set !== text.normalize('NFC')) replaced = true;
    return set;
  };
  const shownBuild = {
    ...build,
    name: shown(build.name),
    board: sheet.board,
    case: {
      ...build.case,
      name: shown(build.case.name),
      leads: build.case.leads.map((lead) => shownLead(lead, shown)),
      ...(build.case.tray && { tray: shownTray(build.case.tray, shown) }),
    },
    extras: build.extras.map((lead) => shownLead(lead, shown)),
    ...(build.units && {
      units: build.units.map((unit) => ({
        ...unit,
        name: shown(unit.name),
        connectors: unit.connectors.map((each) => ({
          ...each,
          print: shown(each.print),
          title: shown(each.title),
        })),
      })),
    }),
    ...(build.notes !== undefined && { notes: shown(build.notes) }),
  };
  return { build: shownBuild, replaced };
}

/** Every place of the tray that has a name: ways, steps and figures tell of them. */
function shownTray(tray: Tray, shown: (text: string) => string): Tray {
  const named = <T extends { name?: string | undefined }>(place: T): T =>
    place.name === undefined ? place : { ...place, name: shown(place.name) };
  return {
    ...tray,
    points: tray.points.map(named),
    openings: tray.openings.map(named),
    bays: tray.bays.map(named),
    ...(tray.standoffs && { standoffs: tray.standoffs.map(named) }),
    ...(tray.fans && { fans: tray.fans.map(named) }),
  };
}

function shownLead(lead: Lead, shown: (text: string) => string): Lead {
  return {
    ...lead,
    name: shown(lead.name),
    parts: lead.parts.map((part) => ({
      ...part,
      ...(part.name !== undefined && { name: shown(part.name) }),
    })),
    plugs: lead.plugs.map((plug) => ({ ...plug, print: shown(plug.print) })),
  };
}
