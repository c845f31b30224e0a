/** What this file needs of the browser's trusted types; the compiler does not know them yet. */
interface PolicyMaker {
  readonly createPolicy: (
    name: 'default',
    rules: {
      readonly createHTML: (text: string) => string | null;
      readonly createScriptURL: (address: string) => string | null;
    },
  ) => unknown;
}

declare global {
  interface Window {
    readonly trustedTypes?: PolicyMaker;
  }
}

/**
 * The policy of the page forbids writing HTML and scripts as text. The drawing library empties its
 * container that way once: the empty text is let through. So are scripts of our own files, for the workers
 * that read, plan, route, diagnose and tell pins from readings.
 */
export function allowWhatWeNeed(): void {
  window.trustedTypes?.createPolicy('default', {
    createHTML: (text) => (text === '' ? text : null),
    createScriptURL: (address) =>
      new URL(address, location.href).origin === location.origin ? address : null,
  });
}
