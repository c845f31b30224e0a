import type { BrowserContext, Page } from 'playwright-core';
import { openDoor, withBrowser, withHome } from '../e2e/built-program';
import { gatherComplaints } from '../e2e/complaints';

/** The program as built, with a home folder of its own, and windows of it in a browser. */
export interface BuiltWindow {
  readonly home: string;
  /** Errors, words on the console, what goes against the policy; grows. */
  readonly complaints: string[];
  readonly openWindow: () => Promise<{ readonly context: BrowserContext; readonly page: Page }>;
}

/**
 * Starts the program, works with it, and ends it.
 *
 * @param filesIn lays files into the home folder; those it names are opened
 */
export function withBuiltWindow<T>(
  filesIn: (home: string) => readonly string[],
  work: (built: BuiltWindow) => Promise<T>,
): Promise<T> {
  return withHome((home) =>
    withBrowser(async (browser) => {
      const door = await openDoor(filesIn(home));
      const complaints: string[] = [];
      const openWindow = async () => {
        const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
        await gatherComplaints(context, complaints);
        const page = await context.newPage();
        await page.goto(door.startUrl());
        await page.getByRole('banner').waitFor();
        return { context, page };
      };
      try {
        return await work({ home, complaints, openWindow });
      } finally {
        await Promise.all(browser.contexts().map((context) => context.close()));
        door.close();
        await door.ended;
      }
    }),
  );
}
