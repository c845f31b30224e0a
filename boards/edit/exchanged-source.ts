import type { Alternative, Pin } from '../document/connector';
import { hasWakeJumper } from '../signals/stub-of';
import { alternativeOf } from './merge-pin';

/**
 * The pin as that other source has it, with the reading it had in the other's place. Print, notes and
 * values are of the pin and not of a source and stay; so does a job that only the reading left out.
 */
export function exchanged(pin: Pin, alternative: Alternative): Pin {
  const { signal, missing, channel, name, source, confidence } = alternative;
  const { print, belongsTo, values, wakeSupply, notes } = pin;
  const nothingSaid = pin.signal === undefined && !pin.missing && !pin.source && pin.name === undefined;
  const alternatives = (pin.alternatives ?? []).flatMap((other) => {
    if (other !== alternative) return [other];
    return nothingSaid ? [] : [alternativeOf(pin)];
  });
  return {
    pin: pin.pin,
    ...(missing ? { missing } : { signal }),
    ...(channel !== undefined && { channel }),
    ...(belongsTo !== undefined && { belongsTo }),
    ...(print !== undefined && { print }),
    ...(name !== undefined && { name }),
    source,
    ...(confidence !== undefined && { confidence }),
    ...(values && { values }),
    ...(wakeSupply && hasWakeJumper(signal) && { wakeSupply }),
    ...(alternatives.length > 0 && { alternatives }),
    ...(notes !== undefined && { notes }),
  };
}
