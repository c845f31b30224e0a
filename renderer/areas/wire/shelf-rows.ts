import type { Build, Seat } from '../../../boards/document/build';
import type { Lead, Plug } from '../../../boards/document/lead';
import { leadsOf, type PlugRef } from '../../../boards/document/lookup';
import { type Finding, SEVERITIES, type Severity } from '../../../boards/findings/finding';
import { plugTitle, plugWords } from '../../words/plug-words';
import { seatWords } from '../../words/seat-words';

/** One plug as the shelf lists it. */
export interface ShelfRow {
  readonly key: string;
  readonly ref: PlugRef;
  readonly lead: Lead;
  readonly plug: Plug;
  readonly title: string;
  /** What it is while it lies on the shelf; where it is once it sits. */
  readonly words: string;
  readonly seat?: Seat;
  readonly severity: Severity | null;
}

export interface ShelfRows {
  readonly onShelf: readonly ShelfRow[];
  readonly seated: readonly ShelfRow[];
  readonly setAside: readonly ShelfRow[];
}

/** Every plug of a build, by where it is. */
export function shelfRows(build: Build, findings: readonly Finding[]): ShelfRows {
  const seats = new Map(build.seats.map((seat) => [plugKey(seat), seat]));
  const severities = new Map<string, Severity>();
  for (const severity of SEVERITIES.toReversed())
    for (const finding of findings)
      if (finding.severity === severity) for (const lead of finding.leads) severities.set(lead, severity);
  const rows = leadsOf(build).flatMap((lead) =>
    lead.plugs.map((plug) => {
      const seat = seats.get(plugKey({ lead: lead.id, plug: plug.id }));
      return rowOf(build, lead, plug, seat, severities.get(lead.id) ?? null);
    }),
  );
  return {
    onShelf: rows.filter((row) => !row.seat && !row.lead.setAside),
    seated: rows.filter((row) => row.seat),
    setAside: rows.filter((row) => !row.seat && row.lead.setAside),
  };
}

function rowOf(
  build: Build,
  lead: Lead,
  plug: Plug,
  seat: Seat | undefined,
  severity: Severity | null,
): ShelfRow {
  const ref: PlugRef = { lead: lead.id, plug: plug.id };
  return {
    key: plugKey(ref),
    ref,
    lead,
    plug,
    title: plugTitle(lead, plug),
    words: seat ? seatWords(build, seat) : plugWords(lead, plug),
    ...(seat && { seat }),
    severity,
  };
}

export function plugKey({ lead, plug }: PlugRef): string {
  return `${lead}/${plug}`;
}
