import type { ComponentType } from 'react';
import { ChosenSection } from './chosen/chosen-section';

/** What stands beside the map, from the top. Each part reads the stores itself. */
export const ROUTE_SECTIONS: readonly { readonly id: string; readonly Section: ComponentType }[] = [
  { id: 'chosen', Section: ChosenSection },
];
