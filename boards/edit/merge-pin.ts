import type { Alternative, Pin, PinSource } from '../document/connector';
import { hasWakeJumper } from '../signals/stub-of';
import { same } from './same';

/** A claim that nobody put a source to. */
const UNSAID: PinSource = { kind: 'guessed', where: 'no source was given' };

/**
 * What is known of a pin once a further source has spoken. Where both say the same, the surer one stands
 * for it. Where they differ, the new one is what the pin is taken for and the older one is kept beside it,
 * except that a guess never takes the place of what was read or measured, and a word that nobody
 * understood never that of a signal. Values and notes stay.
 */
export function mergePin(known: Pin, told: Pin): Pin {
  if (!says(known)) return withAlternatives({ ...known, ...told }, known, told, []);
  if (!says(told) && told.name === undefined) return { ...told, ...known };
  if (agree(known, told)) {
    const toldIsSurer = (told.confidence ?? 0) >= (known.confidence ?? 0);
    const both = toldIsSurer ? { ...known, ...told } : { ...told, ...known };
    return withAlternatives(both, known, told, []);
  }
  const stays = hasSignal(known) && (!hasSignal(told) || (isGuess(told) && !isGuess(known)));
  const [first, second] = stays ? [known, told] : [told, known];
  return withAlternatives(takenFrom(first, known, told), known, told, [alternativeOf(second)]);
}

/** The statement of one source with what does not depend on it: values, notes, print, the wake jumper. */
function takenFrom(first: Pin, known: Pin, told: Pin): Pin {
  const values = told.values ?? known.values;
  const notes = told.notes ?? known.notes;
  const print = told.print ?? known.print;
  const wakeSupply = told.wakeSupply ?? known.wakeSupply;
  const { values: _, notes: __, print: ___, wakeSupply: ____, ...statement } = first;
  return {
    ...statement,
    ...(values && { values }),
    ...(notes !== undefined && { notes }),
    ...(print !== undefined && { print }),
    ...(wakeSupply && hasWakeJumper(first.signal ?? 'unknown') && { wakeSupply }),
  };
}

function withAlternatives(pin: Pin, known: Pin, told: Pin, further: readonly Alternative[]): Pin {
  const { alternatives: _, ...rest } = pin;
  const all = [...(known.alternatives ?? []), ...further, ...(told.alternatives ?? [])];
  const kept = all.filter((one, at) => all.findIndex((other) => same(one, other)) === at);
  return kept.length === 0 ? rest : { ...rest, alternatives: kept };
}

/** The reading of a pin as it is kept beside another; the source is what stands where it has none. */
export function alternativeOf(pin: Pin, unsaid: PinSource = UNSAID): Alternative {
  const { missing, channel, name, confidence } = pin;
  return {
    signal: missing ? 'no-connection' : (pin.signal ?? 'unknown'),
    ...(missing && { missing }),
    ...(channel !== undefined && { channel }),
    ...(name !== undefined && { name }),
    source: pin.source ?? unsaid,
    ...(confidence !== undefined && { confidence }),
  };
}

function hasSignal({ missing, signal }: Pin): boolean {
  return missing === true || (signal !== undefined && signal !== 'unknown');
}

/** Whether anything is known that could be lost. */
function says(pin: Pin): boolean {
  return hasSignal(pin) || (pin.name !== undefined && pin.name !== '');
}

function isGuess(pin: Pin): boolean {
  return pin.source?.kind === 'guessed';
}

/** Whether two sources say the same. A port or a job that only one of them names is no difference. */
function agree(a: Pin, b: Pin): boolean {
  if (!hasSignal(a) && !hasSignal(b)) return a.name === b.name;
  return (
    (a.missing ?? false) === (b.missing ?? false) &&
    (a.missing === true || a.signal === b.signal) &&
    compatible(a.channel, b.channel) &&
    compatible(a.belongsTo, b.belongsTo)
  );
}

function compatible(a: string | undefined, b: string | undefined): boolean {
  return a === undefined || b === undefined || a === b;
}
