import { useEffect } from 'react';

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

/** Searches are not lines: what is pressed in a list below one leaves the focus in it. */
const LEFT_BY_PRESS = 'input:focus:not([role="combobox"], [type="search"]), textarea:focus';

/**
 * Leaves the line that is being typed as soon as anything else is pressed. A list chooses with the press, before the
 * focus goes there, and the form of what is chosen then takes the place of the line, with the words in it.
 */
export function usePressesLeaveLines(): void {
  useEffect(() => {
    const onPress = ({ target }: PointerEvent) => {
      const line = document.querySelector<HTMLElement>(LEFT_BY_PRESS);
      const own = line?.closest('.field') ?? line;
      if (target instanceof Node && !own?.contains(target)) line?.blur();
    };
    window.addEventListener('pointerdown', onPress, { capture: true });
    return () => window.removeEventListener('pointerdown', onPress, { capture: true });
  }, []);
}
