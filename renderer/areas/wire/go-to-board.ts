import type { Workbench } from '../../workbench';

/** Goes to the Wire area with connectors of the board in sight: at once, or as soon as the board is drawn there. */
export function goToBoard(
  { session, canvas }: Pick<Workbench, 'session' | 'canvas'>,
  connectors: readonly string[],
): void {
  const { area, goTo } = session.getState();
  const isThere = area === 'wire';
  // From elsewhere the canvas is still that of the other area.
  goTo('wire', isThere ? [] : connectors);
  if (isThere && connectors.length > 0) canvas.current?.show(connectors);
}
