import { byIdentity } from '../../base/by-identity';
import { signalOf } from '../../signals/signals';
import { behindPin } from './behind-pin';
import type { MeterQuestion, MeterRisk } from './identification';
import { type PinKind, pinKinds } from './pin-kinds';

/** A pin may be touched, or met by an LED tester, when everything unfit for it together has less than this chance. */
const CHANCE_TAKEN = 0.01;
/** What an LED tester may meet at either end, in volts either way. */
const TESTER_VOLTS = 6;
/** What may flow when a touch joins a pin to ground, in amperes. */
const TOUCH_AMPS = 0.01;
/** Inputs of the board that a switch of the case joins to ground: to do the same is what they are made for. */
const SWITCHED: readonly string[] = ['power-switch', 'reset-switch', 'key-lock'];

interface Fitness {
  readonly supply: boolean;
  readonly touch: boolean;
  readonly tester: boolean;
}

/** Every way a signal could be must be fit, since nobody knows which of them it is. */
function fitnessOf({ signals, stub }: PinKind): Fitness {
  const live = [...behindPin(stub, 'standby'), ...behindPin(stub, 'running')];
  const made = signals.every((id) => {
    const { nature, job } = signalOf(id);
    return nature === 'ground' || (nature === 'input' && job !== undefined && SWITCHED.includes(job));
  });
  const supply = signals.some((id) => ['supply', 'feed'].includes(signalOf(id).nature));
  const hardest = Math.max(
    0,
    ...live.filter(({ volts }) => volts !== 0).map(({ volts, ohms }) => Math.abs(volts) / ohms),
  );
  const highest = Math.max(...live.map(({ volts }) => Math.abs(volts)));
  return { supply, touch: made && hardest <= TOUCH_AMPS, tester: highest <= TESTER_VOLTS };
}

const fitnesses = byIdentity((kinds: readonly PinKind[]) => kinds.map(fitnessOf));

/** What a pin must not be for a kind of reading. */
export type Unfit = 'supply' | 'touch' | 'tester';

/** The chance of each post to be unfit, from the chances of its kinds at [post × kinds + kind]. */
export function unfitChance(kinds: Float64Array, post: number, unfit: Unfit): number {
  const fit = fitnesses(pinKinds());
  let sum = 0;
  fit.forEach((one, kind) => {
    const isUnfit = unfit === 'supply' ? one.supply : !one[unfit];
    if (isUnfit) sum += kinds[post * fit.length + kind] ?? 0;
  });
  return sum;
}

/**
 * Why a reading must not be taken, as far as the chances go; undefined where it may be. Ohms and continuity
 * are only ever asked for on an unplugged board, and a volt meter takes nothing from a pin.
 */
export function riskOf(
  question: MeterQuestion,
  kinds: Float64Array,
  postOf: ReadonlyMap<string, number>,
): MeterRisk | undefined {
  if (question.kind !== 'touch' && question.kind !== 'lamp') return undefined;
  const pins = question.kind === 'touch' ? question.pins : [question.plus, question.minus];
  const over = (unfit: Unfit) =>
    pins
      .map((pin) => ({ pin, chance: unfitChance(kinds, postOf.get(pin) ?? 0, unfit) }))
      .sort((a, b) => b.chance - a.chance)
      .find(({ chance }) => chance > CHANCE_TAKEN);
  if (question.kind === 'lamp') {
    const high = over('tester');
    return high && { code: 'may-be-too-high', ...high };
  }
  const supply = over('supply');
  if (supply) return { code: 'may-be-supply', ...supply };
  const other = over('touch');
  return other && { code: 'may-not-be-touched', ...other };
}
