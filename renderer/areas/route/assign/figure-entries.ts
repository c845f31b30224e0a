import type { Build } from '../../../../boards/document/build';
import type { Connector } from '../../../../boards/document/connector';
import { leadsOf, unitsOf } from '../../../../boards/document/lookup';
import { connectorName } from '../../../../boards/document/names';
import type { DriveRating, FanRating, HubRating, Rating } from '../../../../boards/document/rating';
import { hasSignal } from '../../../../boards/routing/assign/build-fans';

/** What figures can be told of. */
export type FigureSubject =
  | {
      readonly kind: 'fan';
      readonly lead: string;
      readonly part: string;
      readonly fan: FanRating | undefined;
    }
  | { readonly kind: 'header' | 'port'; readonly connector: string; readonly rating: Rating }
  | { readonly kind: 'drive'; readonly unit: string; readonly drive: DriveRating | undefined }
  | {
      readonly kind: 'hub';
      readonly unit: string;
      readonly hub: HubRating | undefined;
      readonly outlets: readonly string[];
    };

interface FigureEntry {
  readonly id: string;
  readonly name: string;
  readonly subject: FigureSubject;
}

/** Everything of a build that a manual or a label says figures of. */
export function figureEntries(build: Build): readonly FigureEntry[] {
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
    ...leadsOf(build).flatMap(({ id, name, parts }) =>
      parts.flatMap(({ id: part, kind, fan }) =>
        kind === 'fan'
          ? [{ id: `fan ${id} ${part}`, name, subject: { kind: 'fan' as const, lead: id, part, fan } }]
          : [],
      ),
    ),
    ...unitsOf(build).flatMap(({ id, name, kind, drive, hub, connectors }): readonly FigureEntry[] => {
      if (kind === 'drive') return [{ id: `unit ${id}`, name, subject: { kind, unit: id, drive } }];
      if (kind !== 'hub') return [];
      const outlets = connectors.filter((each) => hasSignal(each, 'fan-supply')).map((each) => each.id);
      return [{ id: `unit ${id}`, name, subject: { kind, unit: id, hub, outlets } }];
    }),
  ];
}
