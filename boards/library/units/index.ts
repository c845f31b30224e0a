import type { UnitType } from '../unit-type';
import { DEVICES } from './devices';
import { FIXED_SUPPLY } from './fixed-supply';
import { HUBS } from './hubs';
import { MODULAR_SUPPLIES } from './modular-supplies';

/** Every unit of the library, in the order a person builds them in: what feeds first. */
export const UNIT_TYPES: readonly UnitType[] = [FIXED_SUPPLY, ...MODULAR_SUPPLIES, ...DEVICES, ...HUBS];
