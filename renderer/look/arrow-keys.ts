const ARROWS: Readonly<Record<string, { readonly x: number; readonly y: number }>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** One step in the direction of an arrow key, rightward and downward on the screen; undefined for other keys. */
export function arrowStep(key: string): { readonly x: number; readonly y: number } | undefined {
  return ARROWS[key];
}
