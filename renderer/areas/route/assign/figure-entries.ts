import type { Build } from '../../../../boards/document/build';
import type { Connector } from '../../../../boards/document/connector';
import { leadsOf, unitsOf } from '../../../../boards/document/lookup';
import { connectorName } from '../../../../boards/document/names';
import type { DriveRating, FanRating, HubRating, Rating } from '../../../../boards/document/rating';
import { fansOf, usualFan } from '../../../../boards/routing/assign/build-fans';
import { hasSignal } from '../../../../boards/routing/assign/has-signal';
import { usualHub } from '../../../../boards/routing/assign/hubs';

interface ConnectorSubject<Kind extends 'header' | 'port'> {
  readonly kind: Kind;
  readonly connector: string;
  readonly rating: Rating;
}

/** What figures can be told of. */
type FigureSubject =
  | {
      readonly kind: 'fan';
      readonly lead: string;
      readonly part: string;
      readonly fan: FanRating | undefined;
      /** What is taken of it where its label was not read. */
      readonly usual: FanRating;
    }
  | ConnectorSubject<'header'>
  | ConnectorSubject<'port'>
  | { readonly kind: 'drive'; readonly unit: string; readonly drive: DriveRating | undefined }
  | {
      readonly kind: 'hub';
      readonly unit: string;
      readonly hub: HubRating | undefined;
      /** What is taken of it where its sheet was not read. */
      readonly usual: HubRating;
      readonly outlets: readonly string[];
    };

/** What figures of one kind are told of. */
export type SubjectOf<Kind extends FigureSubject['kind']> = Extract<FigureSubject, { readonly kind: Kind }>;

interface FigureEntry {
  readonly id: string;
  readonly name: string;
  readonly subject: FigureSubject;
}

/** Everything of a build that a manual or a label says figures of. */
export function figureEntries(build: Build): readonly FigureEntry[] {
  const { hung } = fansOf(build);
  const socket = (kind: 'header' | 'port', { id, rating = {} }: Connector): FigureEntry => ({
    id: `connector ${id}`,
    name: connectorName(build, id),
    subject: { kind, connector: id, rating },
  });
  return [
    ...build.board.connectors.flatMap((each) => {
      if (hasSignal(each, 'fan-supply')) return [socket('header', each)];
      return hasSignal(each, 'sata-a-plus') ? [socket('port', each)] : [];
    }),
    ...leadsOf(build).flatMap((lead) =>
      lead.parts.flatMap(({ id: part, kind, fan }): readonly FigureEntry[] => {
        if (kind !== 'fan') return [];
        const subject = { kind, lead: lead.id, part, fan, usual: usualFan(lead) };
        return [{ id: `fan ${lead.id} ${part}`, name: lead.name, subject }];
      }),
    ),
    ...unitsOf(build).flatMap((unit): readonly FigureEntry[] => {
      const { id, name, kind, drive, hub, connectors } = unit;
      if (kind === 'drive') return [{ id: `unit ${id}`, name, subject: { kind, unit: id, drive } }];
      if (kind !== 'hub') return [];
      // Which connector it takes its speed from is known once it hangs on something.
      const on = hung.find((each) => each.unit.id === id);
      const carrying = connectors.filter((each) => hasSignal(each, 'fan-supply'));
      const outlets = carrying.map((each) => each.id).filter((each) => on?.outlets.includes(each) ?? true);
      const usual = on?.rating ?? usualHub(unit, carrying);
      return [{ id: `unit ${id}`, name, subject: { kind, unit: id, hub, usual, outlets } }];
    }),
  ];
}
