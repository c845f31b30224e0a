/** Every word of "(HD|HDD) (LED|LAMP)": brackets hold alternatives, everything else stands as it is. */
export function expand(pattern: string): readonly string[] {
  const open = pattern.indexOf('(');
  if (open < 0) return [pattern];
  const close = pattern.indexOf(')', open);
  if (close < 0) throw new Error(`No closing bracket in the word "${pattern}"`);
  const rest = expand(pattern.slice(close + 1));
  return pattern
    .slice(open + 1, close)
    .split('|')
    .flatMap((choice) => rest.map((end) => pattern.slice(0, open) + choice + end));
}
