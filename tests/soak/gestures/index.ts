import { DIAGNOSE_GESTURES } from './diagnose';
import { DOCUMENT_GESTURES } from './document';
import type { Gesture } from './gesture';
import { HAND_OVER_GESTURES } from './hand-over';
import { ROUTE_GESTURES } from './route';
import { WIRE_GESTURES } from './wire';

/** What is done in the window, area by area; each area is drawn as often as the others. */
export const GESTURES: readonly (readonly Gesture[])[] = [
  DOCUMENT_GESTURES,
  WIRE_GESTURES,
  ROUTE_GESTURES,
  DIAGNOSE_GESTURES,
  HAND_OVER_GESTURES,
];
