/** A list that is searched by typing takes nothing by being left. */
const LINE = 'input:focus:not([role="combobox"]), textarea:focus';

/**
 * Leaves the line that is being typed and comes back to it, so that what stands in it is taken: a line is taken on
 * Enter or on leaving it, and keys and menus of the window do neither. Saving would say that all is saved while the
 * line says otherwise, and what takes the line off the page would take the words with it.
 */
export function finishTyping(): void {
  // Actions are also run where there is no page.
  const line = globalThis.document?.querySelector<HTMLElement>(LINE);
  line?.blur();
  line?.focus({ preventScroll: true });
}
