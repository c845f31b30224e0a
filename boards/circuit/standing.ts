import { byIdentity } from '../base/by-identity';
import type { Build } from '../document/build';
import type { Connector, Pin } from '../document/connector';
import { connectorsOf, unitsOf } from '../document/lookup';
import { powerJobOf } from '../document/power-job';
import type { Unit } from '../document/unit';
import { signalOf } from '../signals/signals';
import type { Stub } from '../signals/stub';
import { stubOf } from '../signals/stub-of';

/**
 * What a connector is to the circuit. The board's own pins and the outlets of a supply give from rails. Where
 * the build has a supply, what takes power from it, on the board or on a device, only loads the wire. A hub
 * has nothing of its own: pins of it that carry the same are one.
 */
export type Standing =
  | { readonly kind: 'gives' }
  | { readonly kind: 'takes' }
  | { readonly kind: 'joins'; readonly unit: Unit };

/** What every connector of a board by itself is. */
export const GIVES: Standing = { kind: 'gives' };
const TAKES: Standing = { kind: 'takes' };

const joins = byIdentity((unit: Unit): Standing => ({ kind: 'joins', unit }));

/** What each connector of a build is; the same object for the same thing, so that what it makes is kept. */
const standingsOf = byIdentity(
  (build: Build): ReadonlyMap<string, Standing> => {
    const units = unitsOf(build);
    const fed = units.some(({ kind }) => kind === 'supply');
    const onBoard = build.board.connectors.map((connector): [string, Standing] => [
      connector.id,
      fed && powerJobOf(connector) !== undefined ? TAKES : GIVES,
    ]);
    const onUnits = units.flatMap((unit) =>
      unit.connectors.map(({ id }): [string, Standing] => [id, standingIn(unit)]),
    );
    return new Map([...onBoard, ...onUnits]);
  },
  (build) => [build.board.connectors, unitsOf(build)],
);

function standingIn(unit: Unit): Standing {
  if (unit.kind === 'supply') return GIVES;
  return unit.kind === 'hub' ? joins(unit) : TAKES;
}

/** What a connector is; one that is not in the build gives nothing new, as a board alone. */
export function standingOf(build: Build, connector: string): Standing {
  return standingsOf(build).get(connector) ?? GIVES;
}

/** A pin that takes a rail loads it, by as much as the whole device behind it may. */
const LOAD: Stub = [{ kind: 'ground', ohms: 'inlet-ohms' }];

/** What stands behind a pin where it is: as on a board by itself, or as a load of the supply. */
export function stubWhere(pin: Pin, standing: Standing): Stub {
  if (standing.kind === 'joins') return [];
  if (standing.kind === 'gives') return stubOf(pin);
  const { nature, job } = signalOf(pin.signal ?? 'unknown');
  if (pin.signal === 'drive-power-disable' || (nature === 'supply' && job === undefined)) return LOAD;
  // The supply pulls it up; the board only opens and closes it, which says nothing of wiring.
  return pin.signal === 'ps-on' ? [] : stubOf(pin);
}

/** What a hub joins: the name that all its pins with the same on them share; none for a pin that is nothing. */
export function sharedName({ signal = 'unknown', missing }: Pin): string | undefined {
  if (missing) return undefined;
  const { nature, volts } = signalOf(signal);
  if (nature === 'ground') return 'ground';
  if (nature === 'supply') return `${volts} V`;
  return nature === 'open' || nature === 'unknown' ? undefined : signal;
}

/** Every connector of a build that takes power from a supply, with what for. */
export function takersOf(build: Build): readonly Connector[] {
  return connectorsOf(build).filter(
    (connector) => standingOf(build, connector.id).kind === 'takes' && powerJobOf(connector),
  );
}
