import type { Connector } from '../document/connector';
import type { Grid } from '../document/grid';
import type { Unit, UnitKind } from '../document/unit';
import { FAMILY } from './families';
import { box } from './shrouds';

/** A unit of which nothing is known yet but what it is. */
export function blankUnit(kind: UnitKind, inBuild: Pick<Unit, 'id' | 'name'>): Unit {
  return { ...inBuild, kind, connectors: [] };
}

/** A socket of a supply of whose pins nothing is known: what its maker's sheet says is to be filled in. */
export function blankOutlet(grid: Grid, onUnit: Pick<Connector, 'id' | 'print' | 'place'>): Connector {
  return { ...onUnit, title: 'outlet', family: FAMILY.supplySide, grid, pins: [], shroud: box('bottom') };
}
