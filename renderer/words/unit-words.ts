import type { Build } from '../../boards/document/build';
import type { Connector } from '../../boards/document/connector';
import type { Unit, UnitKind } from '../../boards/document/unit';
import { plugTitleOf } from '../areas/wire/placing/hand';
import { counted } from './list-words';
import { plugsOn } from './occupant-words';
import { shapeWords } from './plug-words';

export const UNIT_KIND_WORDS: Readonly<Record<UnitKind, string>> = {
  supply: 'supply unit',
  drive: 'drive',
  card: 'card',
  hub: 'hub or adapter',
  other: 'other unit',
};

/** "supply unit, 8 connectors". */
export function unitWords({ kind, connectors }: Unit): string {
  return `${UNIT_KIND_WORDS[kind]}, ${counted(connectors.length, 'connector')}`;
}

/** Its print, or what it is. */
export function socketName({ print, title }: Pick<Connector, 'print' | 'title'>): string {
  return print || title;
}

/** "12 V outlet, 2 × 4": what a connector of a unit is, beside its print. */
export function socketWords(connector: Connector): string {
  const shape = shapeWords(connector);
  return connector.print === '' ? shape : `${connector.title}, ${shape}`;
}

/** Who sits on a connector: "CPU cable of Ash, CPU"; "free" where nobody does. */
export function onSocketWords(build: Build, connector: string): string {
  const plugs = plugsOn(build, connector).map((plug) => plugTitleOf(build, plug));
  return plugs.length === 0 ? 'free' : plugs.join('; ');
}
