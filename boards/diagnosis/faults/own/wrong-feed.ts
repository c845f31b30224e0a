import { grouped } from '../../../base/grouped';
import type { Build } from '../../../document/build';
import { isWronglyFed } from '../../../findings/fed-pins';
import type { Job } from '../../../signals/signal';
import { type SignalId, signalOf } from '../../../signals/signals';
import type { Machine } from '../../start-chain/machine';
import type { Signs } from '../../start-chain/signs-of-end';
import { type Way, way } from '../fault';
import { feedOf, type InletFeed, railVolts } from './feed';

/** What comes of an inlet that is fed otherwise than it is made for, the worst first. */
const HARMS = ['short', 'burns', 'starved', 'none'] as const;
export type Harm = (typeof HARMS)[number];

/** Rails that devices of today seldom draw from: common practice, no source. */
const SPARE: readonly SignalId[] = ['supply-3v3', 'supply-minus-12v', 'supply-minus-5v'];

/**
 * What comes of what arrives: the supply is shorted where a rail meets a ground or another rail inside a device,
 * whose pins of one name are one; the device burns where each of its rails is another; it has no power where one
 * is missing.
 */
export function harmAt({ pins }: InletFeed): Harm {
  if (pins.some(({ fed }) => fed === 'short')) return 'short';
  const rails = [...grouped(pins.filter(isRail), ({ signal }) => signal)];
  const given = ([, those]: (typeof rails)[number]) =>
    those.flatMap((pin) => (pin.fed === 'untold' ? [] : pin.given));
  if (rails.some((rail) => railVolts(given(rail)).size > 1)) return 'short';
  if (pins.some(({ fed }) => fed === 'too-much' || fed === 'backwards')) return 'burns';
  const isStarved = rails.some(
    ([signal, those]) =>
      !SPARE.includes(signal) && those.every(({ fed }) => fed === 'nothing' || fed === 'too-little'),
  );
  const isAtWrongTime = pins.some(({ fed }) => fed === 'only-standby' || fed === 'only-running');
  const isLineLost = pins.some(({ signal, fed }) => isLine(signal) && fed !== 'right' && fed !== 'untold');
  return isStarved || isAtWrongTime || isLineLost ? 'starved' : 'none';
}

function isRail({ signal }: { readonly signal: SignalId }): boolean {
  return signalOf(signal).nature === 'supply';
}

/** What asks the supply to start, and what says that it has. */
function isLine(signal: SignalId): boolean {
  return signal === 'ps-on' || signal === 'power-ok';
}

/** What a device without power does to a start. Common practice, no source. */
const WITHOUT_POWER: Partial<Readonly<Record<Job, readonly Way[]>>> = {
  'cpu-power': [
    way(4, { processorPower: 'missing' }),
    way(1, { processorPower: 'missing' }, { 'starts-and-stops': 0.7, twitch: 0.3 }),
  ],
  'card-power': [way(1, { processor: 'dead' }, { 'beep-code': 0.4 })],
  'drive-power': [way(1, {}, { 'drive-missing': 0.85, 'no-system': 0.5 })],
};

/** What a device that got too much, or the wrong way round, does to it. Common practice, no source. */
const BURNT: Partial<Readonly<Record<Job, Partial<Machine>>>> = {
  'main-power': { startLogic: 'dead' },
  'cpu-power': { processor: 'dead' },
  'card-power': { processor: 'dead' },
};

const SMELLS: Signs = { smoke: 0.5, smell: 0.5, 'hot-part': 0.3, 'melted-plug': 0.3, pop: 0.2 };
const NO_DRIVE: Signs = { 'drive-missing': 0.9, 'no-system': 0.3 };
/** A supply that shuts down before anything burns shows little else. */
const SHORTED = [way(1, { rails: 'shorted' }, { smoke: 0.1, spark: 0.1, smell: 0.1 })];

/** What a build shows of its inlets alone that differ from those of another: nothing where no harm comes of it. */
export function waysOfFeed(build: Build, beside: Build): readonly Way[] {
  const before = feedOf(beside);
  const changed = feedOf(build).filter((inlet, at) => !isSame(inlet, before[at]));
  return waysAt(changed);
}

/** What comes of inlets that are fed as they are. */
export function waysAt(inlets: readonly InletFeed[]): readonly Way[] {
  const harmed = inlets.map((inlet) => ({ inlet, harm: harmAt(inlet) }));
  const [worst = 'none'] = HARMS.filter((each) => harmed.some(({ harm }) => harm === each));
  if (worst === 'none') return [];
  if (worst === 'short') return SHORTED;
  const those = harmed.filter(({ harm }) => harm === worst).map(({ inlet }) => inlet);
  return worst === 'burns' ? [burnt(those)] : starved(those);
}

function isSame(inlet: InletFeed, other: InletFeed | undefined): boolean {
  return inlet.pins.every(({ fed, given }, at) => {
    const beside = other?.pins[at];
    return beside?.fed === fed && beside.given.join() === given.join();
  });
}

function burnt(inlets: readonly InletFeed[]): Way {
  const machine = Object.assign({}, ...inlets.map(({ job }) => BURNT[job]));
  const drives = inlets.some(({ job }) => job === 'drive-power');
  return way(1, machine, drives ? { ...SMELLS, ...NO_DRIVE } : SMELLS);
}

/** The gravest of what lacks power says how the start ends: the board, then the processor, a card, a drive. */
function starved(inlets: readonly InletFeed[]): readonly Way[] {
  const main = inlets.find(({ job }) => job === 'main-power');
  if (main) return [way(1, withoutMain(main))];
  for (const job of ['cpu-power', 'card-power', 'drive-power'] as const)
    if (inlets.some((inlet) => inlet.job === job)) return WITHOUT_POWER[job] ?? [];
  return [];
}

/** By what is missing: standby, what asks the supply, or one of the rails. */
function withoutMain({ pins }: InletFeed): Partial<Machine> {
  const lacks = (signal: SignalId) =>
    pins.some((pin) => pin.signal === signal && (pin.fed === 'nothing' || isWronglyFed(pin)));
  if (lacks('supply-5v-standby')) return { standby: 'cut-off' };
  return lacks('ps-on') ? { startLogic: 'dead' } : { supply: 'weak' };
}

/** Which jobs no longer get power in a build that got it in another. */
export function jobsLost(build: Build, beside: Build): readonly Job[] {
  const before = feedOf(beside);
  return feedOf(build).flatMap((inlet, at) => {
    const fed = before[at];
    return fed && harmAt(fed) === 'none' && harmAt(inlet) !== 'none' ? [inlet.job] : [];
  });
}
