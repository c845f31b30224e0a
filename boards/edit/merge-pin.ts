import type { Alternative, Pin, PinSource } from '../document/connector';
import { hasWakeJumper } from '../signals/stub-of';
import { withNotes } from './compare/added-notes';
import { same } from './same';

/** A claim that nobody put a source to. */
const UNSAID: PinSource = { kind: 'guessed', where: 'no source was given' };

/**
 * What is known of a pin once a further source has spoken. Where both say the same, the surer one stands
 * for it. Where they differ, the new one is what the pin is taken for and the older one is kept beside it.
 * Either way a guess never takes the place of what was read or measured, and a word that nobody
 * understood never that of a signal. Values stay, and the notes of both.
 */
export function mergePin(known: Pin, told: Pin): Pin {
  const { notes: _, ...pin } = mergedStatements(known, told);
  const notes = withNotes(known.notes, [told.notes ?? '']);
  return { ...pin, ...(notes !== undefined && { notes }) };
}

function mergedStatements(known: Pin, told: Pin): Pin {
  if (!says(known)) return withAlternatives({ ...known, ...told }, known, told, []);
  if (!says(told) && told.name === undefined) return { ...told, ...known };
  if (agree(known, told)) {
    const both = isSurer(told, known) ? asOne(told, known) : asOne(known, told);
    return withAlternatives(both, known, told, []);
  }
  const stays = hasSignal(known) && (!hasSignal(told) || (isGuess(told) && !isGuess(known)));
  const [first, second] = stays ? [known, told] : [told, known];
  return withAlternatives(takenFrom(first, known, told), known, told, [alternativeOf(second)]);
}

/** Whether what was told stands for both. What was read is surer than a guess, and sure where no doubt is said. */
function isSurer(told: Pin, known: Pin): boolean {
  if (isGuess(told) !== isGuess(known)) return isGuess(known);
  const sureness = (pin: Pin) => pin.confidence ?? (isGuess(pin) ? 0 : 1);
  return sureness(told) >= sureness(known);
}

/** The surer of two like statements with what only the other says; how sure a source is goes with that source. */
function asOne(surer: Pin, other: Pin): Pin {
  const { confidence: _, ...rest } = other;
  const aside = surer.source === undefined ? other : rest;
  return { ...aside, ...surer };
}

/** The statement of one source with what does not depend on it: values, print, the wake jumper. */
function takenFrom(first: Pin, known: Pin, told: Pin): Pin {
  const values = told.values ?? known.values;
  const print = told.print ?? known.print;
  const wakeSupply = told.wakeSupply ?? known.wakeSupply;
  const { values: _, print: __, wakeSupply: ___, ...statement } = first;
  return {
    ...statement,
    ...(values && { values }),
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
