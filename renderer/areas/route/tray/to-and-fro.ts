/** From the map to the first field of what is chosen. */
export function toFields(): void {
  document.querySelector<HTMLElement>('.route-section input, .route-section .choice-button')?.focus();
}

/** From the fields back to the map. */
export function toMap(): void {
  document.querySelector<HTMLElement>('.route-page .key-pane')?.focus();
}
