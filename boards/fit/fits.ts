import { byIdentity } from '../base/by-identity';
import type { Build, Seat } from '../document/build';
import type { Fit } from './fit';
import { fitPlug } from './fit-seat';
import { seatedPlugs, wiringOf } from './seated-plug';

/** How each seat of a build fits. A file may hold seats that do not. */
export const fitsOf = byIdentity(
  (build: Build): ReadonlyMap<Seat, Fit> =>
    new Map(seatedPlugs(build).map((seated) => [seated.seat, fitPlug(build, seated)])),
  wiringOf,
);
