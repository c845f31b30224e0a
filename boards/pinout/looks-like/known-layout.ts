import type { Connector } from '../../document/connector';
import { CONNECTOR_TYPES } from '../../library/connectors/index';

/** What of a connector tells which header it is: its positions and what is known of its pins. */
export type Layout = Pick<Connector, 'title' | 'grid' | 'pins'>;

/** A layout to compare with, and whose it is. */
export interface KnownLayout {
  /** "library", or the name of the sheet it stands on. */
  readonly from: string;
  readonly connector: Layout;
}

const LIBRARY: readonly KnownLayout[] = CONNECTOR_TYPES.map(({ connector }) => ({
  from: 'library',
  connector,
}));

/** Everything to compare with: the library first, then the connectors of a person's own sheets. */
export function knownLayouts(own: readonly KnownLayout[]): readonly KnownLayout[] {
  return own.length === 0 ? LIBRARY : [...LIBRARY, ...own];
}
