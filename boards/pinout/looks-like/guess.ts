import type { Pin, PinSource } from '../../document/connector';
import { LIMITS } from '../../document/limits';
import type { PlaceCompared } from './compare';
import type { KnownLayout } from './known-layout';
import { UNSAID } from './pin-code';

/** A likeness is never more than this: the board's own manual or a meter is. */
export const MOST_SURE = 0.5;
/** Nobody can say how sure a likeness is more finely than this. */
export const STEP = 0.05;

/**
 * How sure a pin filled in from a likeness is, from 0 to 0.5: less for a poor match, for few pins that agree,
 * and for every other layout that matches as well.
 *
 * @param asGood how many layouts match as well or better, this one included
 */
export function guessSureness(
  { score, tally }: { readonly score: number; readonly tally: { readonly agree: number } },
  asGood: number,
): number {
  const backing = tally.agree / (tally.agree + 1);
  const sureness = (MOST_SURE * score * backing) / Math.max(1, asGood);
  return Math.max(STEP, rounded(Math.round(sureness / STEP) * STEP));
}

/** "looks like USB 2.0, two ports": where a filled-in pin is said to be read. */
export function guessSource({ from, connector }: KnownLayout): PinSource {
  return { kind: 'guessed', where: cut(`looks like ${connector.title} (${from})`) };
}

/**
 * The pins of which nothing is known here, filled in from a layout laid over them. What is already said of
 * them, a name or a port, stays.
 *
 * @param confidence from 0 to 0.5; a pin of which the layout itself is less sure gets no more than that
 */
export function guessedPins(
  places: readonly PlaceCompared[],
  layout: KnownLayout,
  confidence: number,
): readonly Pin[] {
  const source = guessSource(layout);
  const channel = channelNames(places);
  return places.flatMap(({ here, there, verdict }): readonly Pin[] => {
    if (verdict !== 'unknown-here' || !here || !there) return [];
    const { pin, name = there.name, belongsTo = there.belongsTo } = here;
    const port = here.channel ?? (there.channel && channel(there.channel));
    return [
      {
        pin,
        ...(there.missing ? { missing: true } : { signal: there.signal }),
        ...(name !== undefined && { name }),
        ...(port !== undefined && { channel: port }),
        ...(belongsTo !== undefined && { belongsTo }),
        source,
        confidence: rounded(Math.min(MOST_SURE, confidence, there.confidence ?? UNSAID.read)),
      },
    ];
  });
}

/** The pins on which the two differ, as they are, with the layout's word beside what is known of them. */
export function disputedPins(places: readonly PlaceCompared[], layout: KnownLayout): readonly Pin[] {
  const source = guessSource(layout);
  return places.flatMap(({ here, there, verdict }): readonly Pin[] => {
    if ((verdict !== 'partly' && verdict !== 'differ') || !here || !there) return [];
    const known = here.alternatives ?? [];
    const { signal = 'no-connection', missing, name } = there;
    const told = known.some((each) => each.signal === signal && each.missing === missing);
    if (told || known.length >= LIMITS.alternativesPerPin) return [];
    const other = { signal, ...(missing && { missing }), ...(name !== undefined && { name }), source };
    return [{ ...here, alternatives: [...known, other] }];
  });
}

/**
 * What the ports of the layout are called here. Where pins that agree show it, by their name; else by the
 * layout's own, unless that would be taken for another port.
 */
function channelNames(places: readonly PlaceCompared[]): (theirs: string) => string | undefined {
  const names = new Map<string, string>();
  for (const { here, there, verdict } of places)
    if (
      verdict === 'agree' &&
      here?.channel !== undefined &&
      there?.channel !== undefined &&
      !names.has(there.channel)
    )
      names.set(there.channel, here.channel);
  const taken = new Set(places.flatMap(({ here }) => here?.channel ?? []));
  return (theirs) => names.get(theirs) ?? (taken.has(theirs) ? undefined : theirs);
}

/** A line that a sheet can hold, never cut through the middle of a letter. */
function cut(line: string): string {
  return line.slice(0, LIMITS.textLength).replace(/[\ud800-\udbff]$/, '');
}

function rounded(sureness: number): number {
  return Math.round(sureness * 100) / 100;
}
