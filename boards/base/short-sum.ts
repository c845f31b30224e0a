/** A text as a short number that is another one for another text, but for one in four thousand million. */
export function shortSum(text: string): string {
  let sum = 0x811c9dc5;
  // FNV-1a of 32 bits (Fowler, Noll and Vo), which spreads well and needs no more than a line.
  for (const letter of text) sum = Math.imul(sum ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return (sum >>> 0).toString(36);
}
