import type { Alternative, Pin, PinSource } from '../../document/connector';
import { LIMITS } from '../../document/limits';
import type { SignalId } from '../../signals/signals';
import type { HowRead, OtherReading, ReadPin } from './reading';

/** What the person says of a pin whose word was not understood, or not rightly, by pin and word. */
export type Choices = ReadonlyMap<string, SignalId | 'no-pin'>;

/** A choice holds for the word it was made of: another list for the same pin is read anew. */
export function choiceKey({ label, word }: Pick<ReadPin, 'label' | 'word'>): string {
  return `${label} ${word}`;
}

/** How sure each kind of source is, when it is read without a doubt. A guess never counts for more than a guess. */
const SOURCE_CONFIDENCE: Readonly<Record<PinSource['kind'], number>> = {
  standard: 1,
  manual: 1,
  print: 0.95,
  measured: 0.95,
  guessed: 0.4,
};

/** The reading with the person's own choices in the place of what was read. */
export function withChoices(pins: readonly ReadPin[], choices: Choices): readonly ReadPin[] {
  return pins.map((pin) => {
    const chosen = choices.get(choiceKey(pin));
    if (chosen === undefined) return pin;
    const { missing: _, signal: __, belongsTo: ___, or, ...rest } = pin;
    const what = chosen === 'no-pin' ? { missing: true as const } : { signal: chosen };
    const others = or.filter(({ signal, missing }) => chosen !== (missing ? 'no-pin' : signal));
    return { ...rest, ...what, or: others, how: 'chosen', confidence: 1 };
  });
}

/**
 * The pins as they are written to the connector: the word as it stands, the signal where it was understood,
 * the source the person named. A word that was guessed at is surer of its name than of its signal.
 */
export function pinsOf(pins: readonly ReadPin[], source: PinSource): readonly Pin[] {
  return pins.map(({ label, word, how, confidence, missing, signal, belongsTo, channel, or }): Pin => {
    const name = nameOf(word);
    const sure = Math.min(SOURCE_CONFIDENCE[source.kind], confidence) || undefined;
    return {
      pin: label,
      ...(missing && { missing }),
      ...(signal && { signal }),
      ...(!missing && channel !== undefined && { channel }),
      ...(belongsTo && { belongsTo }),
      ...(name !== '' && { name }),
      source,
      ...(!WITHOUT_SIGNAL.has(how) && sure !== undefined && { confidence: sure }),
      ...(or.length > 0 && { alternatives: alternativesOf(or, source) }),
    };
  });
}

/** Readings that say nothing of the pin's signal, so that there is nothing to be sure of. */
const WITHOUT_SIGNAL: ReadonlySet<HowRead> = new Set(['not-understood', 'no-signal', 'two-meanings']);

/** No list says more of one pin than fits beside what other sources say. */
const MOST_OTHERS = LIMITS.alternativesPerPin / 2;

function alternativesOf(or: readonly OtherReading[], source: PinSource): Alternative[] {
  return or.slice(0, MOST_OTHERS).map(({ signal, missing, name: word = '' }) => {
    const name = nameOf(word);
    return { signal, ...(missing && { missing }), ...(name !== '' && { name }), source };
  });
}

/** The word as the sheet can hold it: one line, not too long, without a mark that nobody types. */
function nameOf(word: string): string {
  return word
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, ' ')
    .trim()
    .slice(0, LIMITS.textLength)
    .replace(/\p{Cs}/gu, '')
    .trim();
}
