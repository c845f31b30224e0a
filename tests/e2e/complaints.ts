import type { BrowserContext, Page } from 'playwright-core';

/**
 * Gathers what no situation may bring about: a bug, a message on the console, something the page's
 * policy forbids, a request to anywhere but the page's own origin.
 */
export async function gatherComplaints(context: BrowserContext, complaints: string[]): Promise<void> {
  await context.exposeBinding('complain', (_source, words: string) => complaints.push(words));
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      window.complain?.(`policy: ${violatedDirective} ${blockedURI}`),
    );
  });
  context.on('page', (page) => listenTo(page, complaints));
}

function listenTo(page: Page, complaints: string[]): void {
  let origin: string | undefined;
  page.on('pageerror', ({ message }) => complaints.push(`bug: ${message}`));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') {
      complaints.push(`console: ${message.text()}`);
    }
  });
  page.on('request', (request) => {
    const url = new URL(request.url());
    origin ??= url.origin;
    if (url.origin !== origin) complaints.push(`request: ${request.url()}`);
  });
}

declare global {
  interface Window {
    readonly complain?: (words: string) => void;
  }
}
