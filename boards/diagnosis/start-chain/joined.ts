import { type Input, type Machine, type Pull, SOUND } from './machine';

type Field = keyof Machine;
type Value<F extends Field> = Machine[F];

/** Of two faults in one place the one named first is what shows. */
const GRAVER: { readonly [F in Exclude<Field, 'power' | 'reset'>]: readonly Value<F>[] } = {
  mains: ['off', 'on'],
  supply: ['dead', 'latched', 'weak', 'sound'],
  standby: ['cut-off', 'overloaded', 'sound'],
  startLogic: ['dead', 'sound'],
  settings: ['being-cleared', 'kept'],
  rails: ['shorted', 'sound'],
  processorPower: ['missing', 'joined'],
  processor: ['dead', 'sound'],
  memory: ['unusable', 'sound'],
  processorFan: ['not-seen', 'seen'],
  cooling: ['none', 'poor', 'sound'],
};

/** A machine with all that is wrong with each of several at once. */
export function joined(machines: readonly Machine[]): Machine {
  const [first = SOUND, ...others] = machines;
  return others.reduce(both, first);
}

function both(one: Machine, other: Machine): Machine {
  const graver = <F extends keyof typeof GRAVER>(field: F): Value<F> => {
    const order: readonly Value<F>[] = GRAVER[field];
    return order.indexOf(one[field]) <= order.indexOf(other[field]) ? one[field] : other[field];
  };
  return {
    mains: graver('mains'),
    supply: graver('supply'),
    standby: graver('standby'),
    startLogic: graver('startLogic'),
    settings: graver('settings'),
    power: bothInputs(one.power, other.power),
    reset: bothInputs(one.reset, other.reset),
    rails: graver('rails'),
    processorPower: graver('processorPower'),
    processor: graver('processor'),
    memory: graver('memory'),
    processorFan: graver('processorFan'),
    cooling: graver('cooling'),
  };
}

/** Whatever pulls at rest pulls then too; a press comes through only where neither keeps it away. */
function bothInputs(one: Input, other: Input): Input {
  const rest = first(['held', 'now-and-then', 'free'], one.rest, other.rest);
  const pressed = first(['free', 'now-and-then', 'held'], one.pressed, other.pressed);
  return { rest, pressed: rest === 'held' ? 'held' : pressed };
}

function first(order: readonly Pull[], one: Pull, other: Pull): Pull {
  return order.indexOf(one) <= order.indexOf(other) ? one : other;
}
