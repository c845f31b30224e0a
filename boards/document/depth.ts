const QUOTE = 0x22;
const BACKSLASH = 0x5c;

/**
 * Where brackets first stand deeper than the limit; undefined where they never do. A loop over the text,
 * before anything is built from it: a reader that calls itself would run out of stack.
 */
export function tooDeepAt(text: string, limit: number): number | undefined {
  let depth = 0;
  for (let at = 0; at < text.length; at++) {
    switch (text.charCodeAt(at)) {
      case QUOTE:
        at = closingQuote(text, at);
        break;
      case 0x5b: // [
      case 0x7b: // {
        depth += 1;
        if (depth > limit) return at;
        break;
      case 0x5d: // ]
      case 0x7d: // }
        depth -= 1;
    }
  }
  return undefined;
}

/** The quote that ends a string, or the end of a text that never ends it. */
function closingQuote(text: string, opening: number): number {
  for (let quote = text.indexOf('"', opening + 1); quote >= 0; quote = text.indexOf('"', quote + 1)) {
    let first = quote;
    while (first - 1 > opening && text.charCodeAt(first - 1) === BACKSLASH) first -= 1;
    // Two backslashes stand for one, and an odd one for the quote.
    if ((quote - first) % 2 === 0) return quote;
  }
  return text.length;
}
