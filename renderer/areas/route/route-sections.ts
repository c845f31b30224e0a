import type { ComponentType } from 'react';
import { AirSection } from './air/air-section';
import { AssignSection } from './assign/assign-section';
import { CableSection } from './cables/cable-section';
import { BundlesSection, OpeningsSection, OrderSection } from './cables/known-sections';
import { LayAllSection } from './cables/lay-all-section';
import { ChosenSection } from './chosen/chosen-section';
import { StandoffsSection } from './standoffs/standoffs-section';
import { SignsSection } from './tray/signs-section';

/** What stands beside the map, from the top. Each part reads the stores itself. */
export const ROUTE_SECTIONS: readonly { readonly id: string; readonly Section: ComponentType }[] = [
  { id: 'lay-all', Section: LayAllSection },
  { id: 'cable', Section: CableSection },
  { id: 'chosen', Section: ChosenSection },
  { id: 'openings', Section: OpeningsSection },
  { id: 'bundles', Section: BundlesSection },
  { id: 'order', Section: OrderSection },
  { id: 'standoffs', Section: StandoffsSection },
  { id: 'air', Section: AirSection },
  { id: 'assign', Section: AssignSection },
  { id: 'signs', Section: SignsSection },
];
