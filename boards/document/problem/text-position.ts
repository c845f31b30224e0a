/** Line and column, both counted from 1, of a character of a text. */
export function positionOf(text: string, at: number): { readonly line: number; readonly column: number } {
  let line = 1;
  let start = 0;
  for (let next = text.indexOf('\n'); next !== -1 && next < at; next = text.indexOf('\n', start)) {
    line += 1;
    start = next + 1;
  }
  return { line, column: at - start + 1 };
}
